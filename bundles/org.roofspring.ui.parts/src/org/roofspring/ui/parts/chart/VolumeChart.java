package org.roofspring.ui.parts.chart;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swtchart.Chart;
import org.eclipse.swtchart.IAxis;
import org.eclipse.swtchart.ILineSeries;
import org.eclipse.swtchart.ISeries;
import org.eclipse.swtchart.LineStyle;
import org.eclipse.swtchart.Range;
import org.roofspring.quantity.Unit;
import org.roofspring.ui.look.Palette;

/**
 * Lines of volume over days, thinned to the pixels of the plot. Drag to move in time, turn the wheel to change the span,
 * double-click to see the whole record; the arrow, plus, minus and Home keys do the same.
 */
public final class VolumeChart {
    private static final ZoneId ZONE = ZoneId.systemDefault();
    private static final double LEAST_DAYS = 10;
    private static final double HEADROOM = 1.06;

    /** Is told the value under the pointer. */
    interface Reader {
        /** @param day null where there is none */
        void read(LocalDate day, double volume, Unit unit);
    }

    private final Chart chart;
    private final Reader reader;
    private List<VolumeTrace> traces = List.of();
    private Unit unit;
    private double fromDay;
    private double toDay;
    private boolean stale;
    private int dragX = -1;

    VolumeChart(Composite parent, Reader reader) {
        this.reader = reader;
        chart = new Chart(parent, SWT.NONE);
        Palette palette = Palette.of(parent);
        Color white = parent.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND);
        chart.setBackground(white);
        chart.getPlotArea().setBackground(white);
        chart.getTitle().setVisible(false);
        chart.getLegend().setVisible(false);
        for (IAxis axis : chart.getAxisSet().getAxes()) {
            axis.getTick().setForeground(palette.label());
            axis.getTitle().setForeground(palette.label());
            axis.getTitle().setFont(parent.getFont());
            axis.getTick().setFont(parent.getFont());
            axis.getGrid().setStyle(LineStyle.SOLID);
            axis.getGrid().setForeground(palette.line());
        }
        x().getTitle().setText("Date");
        y().getTitle().setText("Volume in the tanks");
        listen(chart.getPlotArea().getControl());
    }

    private IAxis x() {
        return chart.getAxisSet().getXAxis(0);
    }

    private IAxis y() {
        return chart.getAxisSet().getYAxis(0);
    }

    private void listen(Control plot) {
        plot.addListener(SWT.MouseDown, event -> {
            plot.setFocus();
            dragX = event.button == 1 ? event.x : -1;
        });
        plot.addListener(SWT.MouseUp, event -> dragX = -1);
        plot.addListener(SWT.MouseMove, this::moved);
        plot.addListener(SWT.MouseExit, event -> reader.read(null, 0, unit));
        plot.addListener(SWT.MouseDoubleClick, event -> showAll());
        plot.addListener(SWT.MouseVerticalWheel, event -> {
            event.doit = false;
            zoom(event.count > 0 ? 0.8 : 1.25, dayAt(event.x));
        });
        plot.addListener(SWT.KeyDown, event -> {
            double step = (toDay - fromDay) / 8;
            switch (event.keyCode) {
                case SWT.ARROW_LEFT -> pan(-step);
                case SWT.ARROW_RIGHT -> pan(step);
                case SWT.HOME -> showAll();
                default -> {
                    if (event.character == '+') {
                        zoom(0.5);
                    } else if (event.character == '-') {
                        zoom(2);
                    }
                }
            }
        });
        plot.addListener(SWT.Resize, event -> draw());
    }

    private double dayAt(int pixel) {
        int width = Math.max(1, chart.getPlotArea().getSize().x);
        return fromDay + (toDay - fromDay) * pixel / width;
    }

    private void moved(Event event) {
        if (traces.isEmpty()) {
            return;
        }
        if (dragX >= 0) {
            pan(dayAt(dragX) - dayAt(event.x));
            dragX = event.x;
        }
        VolumeTrace first = traces.getFirst();
        int day = (int) Math.floor(dayAt(event.x));
        if (day >= 0 && day < first.daily().days()) {
            reader.read(first.daily().firstDay().plusDays(day), unit.fromSi(first.daily().unit().toSi(first.daily().value(day))), unit);
        } else {
            reader.read(null, 0, unit);
        }
    }

    /** Shows traces; the span of time stays when the record does. */
    void show(List<VolumeTrace> newTraces, Unit newUnit, String unitSymbol) {
        if (newTraces.equals(traces) && newUnit == unit) {
            return;
        }
        boolean sameRecord = !traces.isEmpty() && traces.getFirst().daily().firstDay().equals(newTraces.getFirst().daily().firstDay())
                && days() == newTraces.getFirst().daily().days();
        traces = List.copyOf(newTraces);
        unit = newUnit;
        y().getTitle().setText("Volume in the tanks [" + unitSymbol + "]");
        if (!sameRecord) {
            fromDay = 0;
            toDay = Math.max(1, days());
        }
        chart.getLegend().setVisible(traces.size() > 1);
        chart.getLegend().setPosition(SWT.TOP);
        draw();
    }

    private int days() {
        return traces.isEmpty() ? 0 : traces.getFirst().daily().days();
    }

    /** Greys the lines while they are out of date. */
    void setStale(boolean nowStale) {
        if (nowStale != stale) {
            stale = nowStale;
            colour();
            chart.redraw();
        }
    }

    boolean isEmpty() {
        return traces.isEmpty();
    }

    void clear() {
        traces = List.of();
        for (ISeries<?> series : chart.getSeriesSet().getSeries()) {
            chart.getSeriesSet().deleteSeries(series.getId());
        }
        chart.redraw();
    }

    void showAll() {
        fromDay = 0;
        toDay = Math.max(1, days());
        draw();
    }

    /** Shows a span so many times as long, around its middle. */
    void zoom(double factor) {
        zoom(factor, (fromDay + toDay) / 2);
    }

    private void zoom(double factor, double aroundDay) {
        double span = Math.clamp((toDay - fromDay) * factor, Math.min(LEAST_DAYS, Math.max(1, days())), Math.max(1, days()));
        double share = (aroundDay - fromDay) / (toDay - fromDay);
        fromDay = aroundDay - span * share;
        toDay = fromDay + span;
        pan(0);
    }

    /** Moves the span by so many days, within the record. */
    void pan(double byDays) {
        double span = toDay - fromDay;
        fromDay = Math.clamp(fromDay + byDays, 0, Math.max(0, days() - span));
        toDay = fromDay + span;
        draw();
    }

    private void draw() {
        if (traces.isEmpty() || chart.isDisposed()) {
            return;
        }
        chart.suspendUpdate(true);
        try {
            List<String> wanted = new ArrayList<>();
            double greatest = 0;
            for (VolumeTrace trace : traces) {
                wanted.add(trace.title());
                greatest = Math.max(greatest, draw(trace));
            }
            for (ISeries<?> series : chart.getSeriesSet().getSeries()) {
                if (!wanted.contains(series.getId())) {
                    chart.getSeriesSet().deleteSeries(series.getId());
                }
            }
            LocalDate first = traces.getFirst().daily().firstDay();
            x().setRange(new Range(millis(first, fromDay), millis(first, toDay)));
            y().setRange(new Range(0, greatest == 0 ? 1 : greatest * HEADROOM));
            colour();
        } finally {
            chart.suspendUpdate(false);
        }
        chart.redraw();
    }

    /** Draws one line and returns the greatest value of the whole record, so that the scale stays while moving in time. */
    private double draw(VolumeTrace trace) {
        double[] values = trace.daily().values();
        int from = Math.max(0, (int) Math.floor(fromDay));
        int to = Math.min(values.length, (int) Math.ceil(toDay) + 1);
        int columns = Math.max(100, chart.getPlotArea().getSize().x);
        TraceThinner.Thinned thinned = TraceThinner.thin(values, from, Math.max(from, to), columns);
        Date[] dates = new Date[thinned.index().length];
        double[] shown = new double[dates.length];
        Unit given = trace.daily().unit();
        for (int i = 0; i < dates.length; i++) {
            dates[i] = new Date((long) millis(trace.daily().firstDay(), thinned.index()[i]));
            shown[i] = given == unit ? thinned.values()[i] : unit.fromSi(given.toSi(thinned.values()[i]));
        }
        ILineSeries<?> line = (ILineSeries<?>) chart.getSeriesSet().getSeries(trace.title());
        if (line == null) {
            line = (ILineSeries<?>) chart.getSeriesSet().createSeries(ISeries.SeriesType.LINE, trace.title());
            line.setSymbolType(ILineSeries.PlotSymbolType.NONE);
            line.setAntialias(SWT.ON);
        }
        line.setXDateSeries(dates);
        line.setYSeries(shown);
        double greatest = 0;
        for (double value : values) {
            greatest = Math.max(greatest, value);
        }
        return given == unit ? greatest : unit.fromSi(given.toSi(greatest));
    }

    private void colour() {
        Palette palette = Palette.of(chart);
        ISeries<?>[] all = chart.getSeriesSet().getSeries();
        LineStyle[] styles = { LineStyle.SOLID, LineStyle.DASH, LineStyle.DOT, LineStyle.DASHDOT };
        for (int i = 0; i < all.length; i++) {
            ILineSeries<?> line = (ILineSeries<?>) all[i];
            line.setLineColor(stale ? palette.stale() : palette.water());
            line.setLineStyle(styles[i % styles.length]);
            line.setLineWidth(1);
        }
    }

    private static double millis(LocalDate first, double day) {
        long whole = (long) Math.floor(day);
        Instant start = first.plus(whole, ChronoUnit.DAYS).atStartOfDay(ZONE).toInstant();
        return start.toEpochMilli() + (day - whole) * ChronoUnit.DAYS.getDuration().toMillis();
    }

    Control control() {
        return chart;
    }

    /** The values that are drawn now, for tests; empty when there is no line. */
    public double[] drawnValues() {
        ISeries<?>[] all = chart.getSeriesSet().getSeries();
        return all.length == 0 ? new double[0] : all[0].getYSeries();
    }

    /** Whether the lines are marked as out of date, for tests. */
    public boolean isStale() {
        return stale;
    }
}

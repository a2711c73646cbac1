package org.roofspring.ui.parts.chart;

import java.time.LocalDate;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swtchart.Chart;
import org.eclipse.swtchart.IAxis;
import org.eclipse.swtchart.ICustomPaintListener;
import org.eclipse.swtchart.ILineSeries;
import org.eclipse.swtchart.ISeries;
import org.eclipse.swtchart.LineStyle;
import org.eclipse.swtchart.Range;
import org.roofspring.quantity.Unit;
import org.roofspring.ui.look.DateTicks;
import org.roofspring.ui.look.Palette;

/**
 * A line of volume over days, thinned to the pixels of the plot. Drag to move in time, turn the wheel to change the span,
 * double-click to see the whole record; the arrow, plus, minus and Home keys do the same. The time axis is drawn here,
 * since the chart library has none.
 */
public final class VolumeChart {
    private static final String LINE = "volume";
    private static final double LEAST_DAYS = 10;
    private static final double HEADROOM = 1.06;
    private static final int ROOM_FOR_LABEL = 70;

    /** Is told the value under the pointer. */
    interface Reader {
        /** @param day null where there is none */
        void read(LocalDate day, double volume, Unit unit);
    }

    private final Composite whole;
    private final Chart chart;
    private final Canvas timeAxis;
    private final Reader reader;
    private final Palette palette;
    private final Color paper;
    private VolumeTrace trace;
    private Unit unit;
    private double fromDay;
    private double toDay;
    private boolean stale;
    private int dragX = -1;

    VolumeChart(Composite parent, Reader reader) {
        this.reader = reader;
        palette = Palette.of(parent);
        paper = parent.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND);
        whole = new Composite(parent, SWT.NONE);
        whole.setBackground(paper);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(whole);
        chart = new Chart(whole, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(chart);
        chart.setBackground(paper);
        chart.getPlotArea().setBackground(paper);
        chart.getTitle().setVisible(false);
        chart.getLegend().setVisible(false);
        y().getTick().setForeground(palette.label());
        y().getTick().setFont(parent.getFont());
        y().getTitle().setForeground(palette.label());
        y().getTitle().setFont(parent.getFont());
        y().getGrid().setStyle(LineStyle.SOLID);
        y().getGrid().setForeground(palette.line());
        x().getTick().setVisible(false);
        x().getTitle().setVisible(false);
        x().getGrid().setStyle(LineStyle.NONE);
        chart.getPlotArea().addCustomPaintListener(new ICustomPaintListener() {
            @Override
            public void paintControl(PaintEvent event) {
                drawTimeGrid(event.gc);
            }

            @Override
            public boolean drawBehindSeries() {
                return true;
            }
        });
        timeAxis = new Canvas(whole, SWT.DOUBLE_BUFFERED);
        timeAxis.setBackground(paper);
        GC gc = new GC(timeAxis);
        GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, 2 * gc.getFontMetrics().getHeight() + 8).applyTo(timeAxis);
        gc.dispose();
        timeAxis.addPaintListener(event -> drawTimeAxis(event.gc));
        listen(chart.getPlotArea().getControl());
    }

    private IAxis x() {
        return chart.getAxisSet().getXAxis(0);
    }

    private IAxis y() {
        return chart.getAxisSet().getYAxis(0);
    }

    private Control plot() {
        return chart.getPlotArea().getControl();
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
        plot.addListener(SWT.KeyDown, this::key);
        plot.addListener(SWT.Resize, event -> draw());
    }

    private void key(Event event) {
        double step = (toDay - fromDay) / 8;
        if (event.keyCode == SWT.ARROW_LEFT) {
            pan(-step);
        } else if (event.keyCode == SWT.ARROW_RIGHT) {
            pan(step);
        } else if (event.keyCode == SWT.HOME) {
            showAll();
        } else if (event.character == '+') {
            zoom(0.5);
        } else if (event.character == '-') {
            zoom(2);
        }
    }

    private int plotWidth() {
        return Math.max(1, plot().getSize().x);
    }

    private double dayAt(int pixel) {
        return fromDay + (toDay - fromDay) * pixel / plotWidth();
    }

    private int pixelOf(double day) {
        return (int) Math.round((day - fromDay) / (toDay - fromDay) * plotWidth());
    }

    private void moved(Event event) {
        if (trace == null) {
            return;
        }
        if (dragX >= 0) {
            pan(dayAt(dragX) - dayAt(event.x));
            dragX = event.x;
        }
        int day = (int) Math.floor(dayAt(event.x));
        if (day >= 0 && day < days()) {
            reader.read(trace.daily().firstDay().plusDays(day), shown(trace.daily().value(day)), unit);
        } else {
            reader.read(null, 0, unit);
        }
    }

    private double shown(double value) {
        Unit given = trace.daily().unit();
        return given == unit ? value : unit.fromSi(given.toSi(value));
    }

    /** Shows a trace; the span of time stays when the record does. */
    void show(VolumeTrace newTrace, Unit newUnit, String unitSymbol) {
        String title = "Volume in " + newTrace.title() + " [" + unitSymbol + "]";
        if (newTrace.equals(trace) && newUnit == unit && title.equals(y().getTitle().getText())) {
            return;
        }
        boolean sameRecord = trace != null && trace.daily().firstDay().equals(newTrace.daily().firstDay())
                && days() == newTrace.daily().days();
        trace = newTrace;
        unit = newUnit;
        y().getTitle().setText(title);
        if (sameRecord) {
            draw();
        } else {
            showAll();
        }
    }

    private int days() {
        return trace == null ? 0 : trace.daily().days();
    }

    /** Greys the line while it is out of date. */
    void setStale(boolean nowStale) {
        if (nowStale != stale) {
            stale = nowStale;
            colour();
            chart.redraw();
        }
    }

    boolean isEmpty() {
        return trace == null;
    }

    void clear() {
        trace = null;
        if (chart.getSeriesSet().getSeries(LINE) != null) {
            chart.getSeriesSet().deleteSeries(LINE);
        }
        chart.redraw();
        timeAxis.redraw();
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
        double longest = Math.max(1, days());
        double span = Math.clamp((toDay - fromDay) * factor, Math.min(LEAST_DAYS, longest), longest);
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
        if (trace == null || chart.isDisposed()) {
            return;
        }
        double[] values = trace.daily().values();
        int from = Math.max(0, (int) Math.floor(fromDay));
        int to = Math.min(values.length, (int) Math.ceil(toDay) + 1);
        TraceThinner.Thinned thinned = TraceThinner.thin(values, from, Math.max(from, to), plotWidth());
        double[] x = new double[thinned.index().length];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = thinned.index()[i];
            y[i] = shown(thinned.values()[i]);
        }
        // the greatest value of the whole record, so that the scale stays while moving in time
        double greatest = 0;
        for (double value : values) {
            greatest = Math.max(greatest, value);
        }
        chart.suspendUpdate(true);
        try {
            ILineSeries<?> line = line();
            line.setXSeries(x);
            line.setYSeries(y);
            x().setRange(new Range(fromDay, toDay));
            y().setRange(new Range(0, greatest == 0 ? 1 : shown(greatest) * HEADROOM));
            colour();
        } finally {
            chart.suspendUpdate(false);
        }
        chart.redraw();
        timeAxis.redraw();
    }

    private ILineSeries<?> line() {
        ILineSeries<?> line = (ILineSeries<?>) chart.getSeriesSet().getSeries(LINE);
        if (line == null) {
            line = (ILineSeries<?>) chart.getSeriesSet().createSeries(ISeries.SeriesType.LINE, LINE);
            line.setSymbolType(ILineSeries.PlotSymbolType.NONE);
            line.setAntialias(SWT.ON);
        }
        return line;
    }

    private void colour() {
        if (trace != null) {
            line().setLineColor(stale ? palette.stale() : palette.water());
        }
    }

    private Iterable<DateTicks.Tick> ticks() {
        return DateTicks.of(trace.daily().firstDay(), fromDay, toDay, Math.max(1, plotWidth() / ROOM_FOR_LABEL));
    }

    private void drawTimeGrid(GC gc) {
        if (trace == null) {
            return;
        }
        int bottom = plot().getSize().y - 1;
        gc.setForeground(palette.line());
        for (DateTicks.Tick tick : ticks()) {
            gc.drawLine(pixelOf(tick.day()), 0, pixelOf(tick.day()), bottom);
        }
        gc.setForeground(palette.label());
        gc.drawLine(0, bottom, plotWidth(), bottom);
    }

    private void drawTimeAxis(GC gc) {
        gc.setBackground(paper);
        gc.fillRectangle(timeAxis.getClientArea());
        if (trace == null) {
            return;
        }
        Point origin = timeAxis.toControl(plot().toDisplay(0, 0));
        gc.setForeground(palette.label());
        int height = gc.getFontMetrics().getHeight();
        for (DateTicks.Tick tick : ticks()) {
            int x = origin.x + pixelOf(tick.day());
            int width = gc.textExtent(tick.label()).x;
            int left = Math.clamp(x - width / 2, 0, Math.max(0, timeAxis.getSize().x - width));
            gc.drawText(tick.label(), left, 0, true);
        }
        gc.drawText("Date", origin.x + (plotWidth() - gc.textExtent("Date").x) / 2, height + 2, true);
    }

    Control control() {
        return whole;
    }

    void setFocus() {
        plot().setFocus();
    }

    /** The values that are drawn now, for tests; empty when there is no line. */
    public double[] drawnValues() {
        ISeries<?> line = chart.getSeriesSet().getSeries(LINE);
        return line == null ? new double[0] : line.getYSeries();
    }

    /** Whether the line is marked as out of date, for tests. */
    public boolean isStale() {
        return stale;
    }
}

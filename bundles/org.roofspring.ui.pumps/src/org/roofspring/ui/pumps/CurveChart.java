package org.roofspring.ui.pumps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swtchart.Chart;
import org.eclipse.swtchart.IAxis;
import org.eclipse.swtchart.ICustomPaintListener;
import org.eclipse.swtchart.ILineSeries;
import org.eclipse.swtchart.ISeries;
import org.eclipse.swtchart.LineStyle;
import org.eclipse.swtchart.Range;
import org.roofspring.calc.FindingValue.Curve;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.UnitSystem;
import org.roofspring.quantity.Units;
import org.roofspring.ui.look.Palette;

/**
 * The curves of the selected pumps over the band of head that the system needs. A ring marks where each works by
 * design; the thick part of a curve is where it works over all states.
 */
public final class CurveChart {
    /** Of different lightness and hue, told apart by most colour-blind people too (after Okabe and Ito, 2008). */
    private static final RGB[] INKS = {new RGB(0, 114, 178), new RGB(213, 94, 0), new RGB(0, 130, 95),
        new RGB(160, 70, 130), new RGB(90, 70, 20), new RGB(30, 30, 30)};
    private static final LineStyle[] STROKES = {LineStyle.SOLID, LineStyle.DASH, LineStyle.DASHDOT, LineStyle.DOT};
    private static final String LOWEST = "System, lowest need";
    private static final String HIGHEST = "System, highest need";
    private static final double HEADROOM = 1.08;
    private static final int BAND_ALPHA = 40;

    private final Chart chart;
    private final Palette palette;
    private Unit flowUnit;
    private Unit headUnit;
    private double[] bandFlow = {};
    private double[] bandLow = {};
    private double[] bandHigh = {};
    private boolean stale;

    CurveChart(Composite parent) {
        palette = Palette.of(parent);
        chart = new Chart(parent, SWT.NONE);
        Color paper = parent.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND);
        chart.setBackground(paper);
        chart.getPlotArea().setBackground(paper);
        chart.getTitle().setVisible(false);
        chart.getLegend().setPosition(SWT.BOTTOM);
        chart.getLegend().setBackground(paper);
        chart.getLegend().setForeground(palette.label());
        chart.getLegend().setFont(parent.getFont());
        for (IAxis axis : List.of(x(), y())) {
            axis.getTick().setForeground(palette.label());
            axis.getTick().setFont(parent.getFont());
            axis.getTitle().setForeground(palette.label());
            axis.getTitle().setFont(parent.getFont());
            axis.getGrid().setStyle(LineStyle.SOLID);
            axis.getGrid().setForeground(palette.line());
        }
        chart.getPlotArea().addCustomPaintListener(new ICustomPaintListener() {
            @Override
            public void paintControl(PaintEvent event) {
                fillBand(event.gc);
            }

            @Override
            public boolean drawBehindSeries() {
                return true;
            }
        });
    }

    private IAxis x() {
        return chart.getAxisSet().getXAxis(0);
    }

    private IAxis y() {
        return chart.getAxisSet().getYAxis(0);
    }

    /** @param selected rows whose curves are drawn, in the order of their colours */
    void show(BoardModel model, List<BoardRow> selected, UnitSystem system, QuantityFormat format) {
        flowUnit = system.preferred(Units.L_PER_S);
        headUnit = system.preferred(Units.M);
        chart.suspendUpdate(true);
        try {
            for (ISeries<?> series : chart.getSeriesSet().getSeries()) {
                chart.getSeriesSet().deleteSeries(series.getId());
            }
            x().getTitle().setText("Flow [" + format.symbol(flowUnit) + "]");
            y().getTitle().setText("Head [" + format.symbol(headUnit) + "]");
            stale = model.stale();
            band(model);
            double mostFlow = last(bandFlow);
            double mostHead = greatest(bandHigh, bandFlow.length);
            boolean narrow = !selected.isEmpty();
            double curveFlow = 0;
            double curveHead = 0;
            for (int i = 0; i < selected.size(); i++) {
                BoardRow row = selected.get(i);
                if (row.head() != null) {
                    double[] flow = in(row.head().x(), row.head().xUnit(), flowUnit);
                    double[] head = in(row.head().y(), row.head().yUnit(), headUnit);
                    draw(row, i, flow, head);
                    curveFlow = Math.max(curveFlow, last(flow));
                    curveHead = Math.max(curveHead, greatest(head, head.length));
                }
            }
            double wide = narrow && curveFlow > 0 ? curveFlow : mostFlow;
            double high = Math.max(curveHead, upTo(wide, mostHead));
            x().setRange(new Range(0, wide > 0 ? wide * HEADROOM : 1));
            y().setRange(new Range(0, high > 0 ? high * HEADROOM : 1));
        } finally {
            chart.suspendUpdate(false);
        }
        chart.redraw();
    }

    /** The most head that the system needs up to a flow. */
    private double upTo(double flow, double otherwise) {
        double most = 0;
        for (int i = 0; i < bandFlow.length && bandFlow[i] <= flow; i++) {
            most = Math.max(most, bandHigh[i]);
        }
        return most > 0 ? most : otherwise;
    }

    private void band(BoardModel model) {
        if (model.lowest() == null) {
            bandFlow = new double[0];
            bandLow = bandFlow;
            bandHigh = bandFlow;
            return;
        }
        Curve lowest = model.lowest();
        bandFlow = in(lowest.x(), lowest.xUnit(), flowUnit);
        bandLow = in(lowest.y(), lowest.yUnit(), headUnit);
        bandHigh = in(model.highest().y(), model.highest().yUnit(), headUnit);
        Color ink = stale ? palette.stale() : palette.muted();
        line(LOWEST, bandFlow, bandLow, ink, LineStyle.DOT, 1);
        line(HIGHEST, bandFlow, bandHigh, ink, LineStyle.DASH, 1);
    }

    private void draw(BoardRow row, int place, double[] flow, double[] head) {
        boolean grey = stale || row.figuresStale();
        Color ink = grey ? palette.stale() : new Color(INKS[place % INKS.length]);
        LineStyle stroke = STROKES[place / INKS.length % STROKES.length];
        String name = unused(row.name() + (grey ? " (out of date)" : ""));
        line(name, flow, head, ink, stroke, 2);
        Optional<Double> low = row.number(Column.FLOW_LOWEST).map(this::flow);
        Optional<Double> high = row.number(Column.FLOW_HIGHEST).map(this::flow);
        if (low.isPresent() && high.isPresent() && high.get() > low.get()) {
            double[][] part = part(flow, head, low.get(), high.get());
            line(name + ", all states", part[0], part[1], ink, LineStyle.SOLID, 5).setVisibleInLegend(false);
        }
        Optional<Double> designFlow = row.number(Column.FLOW).map(this::flow);
        Optional<Double> designHead = row.number(Column.HEAD).map(number -> number.in(headUnit));
        if (designFlow.isPresent() && designHead.isPresent()) {
            ILineSeries<?> ring = line(name + ", design", new double[] {designFlow.get()},
                    new double[] {designHead.get()}, ink, LineStyle.NONE, 1);
            ring.setSymbolType(ILineSeries.PlotSymbolType.CIRCLE);
            ring.setSymbolSize(6);
            ring.setSymbolColor(ink);
            ring.setVisibleInLegend(false);
        }
    }

    /** Two pumps may have one name, but two lines must not. */
    private String unused(String name) {
        String free = name;
        for (int number = 2; chart.getSeriesSet().getSeries(free) != null; number++) {
            free = name + " (" + number + ")";
        }
        return free;
    }

    private double flow(Quantity quantity) {
        return quantity.in(flowUnit);
    }

    private ILineSeries<?> line(String name, double[] flow, double[] head, Color ink, LineStyle stroke, int width) {
        ILineSeries<?> line = (ILineSeries<?>) chart.getSeriesSet().createSeries(ISeries.SeriesType.LINE, name);
        line.setXSeries(flow);
        line.setYSeries(head);
        line.setLineColor(ink);
        line.setLineStyle(stroke);
        line.setLineWidth(width);
        line.setSymbolType(ILineSeries.PlotSymbolType.NONE);
        line.setAntialias(SWT.ON);
        return line;
    }

    /** The points of a drawn line between two flows, with its ends on straight lines between the points. */
    private static double[][] part(double[] flow, double[] head, double from, double to) {
        List<double[]> points = new ArrayList<>();
        points.add(new double[] {from, between(flow, head, from)});
        for (int i = 0; i < flow.length; i++) {
            if (flow[i] > from && flow[i] < to) {
                points.add(new double[] {flow[i], head[i]});
            }
        }
        points.add(new double[] {to, between(flow, head, to)});
        return new double[][] {points.stream().mapToDouble(point -> point[0]).toArray(),
            points.stream().mapToDouble(point -> point[1]).toArray()};
    }

    private static double between(double[] x, double[] y, double at) {
        for (int i = 1; i < x.length; i++) {
            if (at <= x[i]) {
                return y[i - 1] + (y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]);
            }
        }
        return y[y.length - 1];
    }

    private static double[] in(double[] values, Unit given, Unit wanted) {
        double[] converted = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            converted[i] = given == wanted ? values[i] : wanted.fromSi(given.toSi(values[i]));
        }
        return converted;
    }

    private static double last(double[] values) {
        return values.length == 0 ? 0 : values[values.length - 1];
    }

    private static double greatest(double[] values, int count) {
        double most = 0;
        for (int i = 0; i < count; i++) {
            most = Math.max(most, values[i]);
        }
        return most;
    }

    private void fillBand(GC gc) {
        if (bandFlow.length < 2) {
            return;
        }
        int[] outline = new int[4 * bandFlow.length];
        for (int i = 0; i < bandFlow.length; i++) {
            int back = 2 * bandFlow.length - 1 - i;
            outline[2 * i] = x().getPixelCoordinate(bandFlow[i]);
            outline[2 * i + 1] = y().getPixelCoordinate(bandHigh[i]);
            outline[2 * back] = outline[2 * i];
            outline[2 * back + 1] = y().getPixelCoordinate(bandLow[i]);
        }
        gc.setBackground(stale ? palette.stale() : palette.water());
        gc.setAlpha(BAND_ALPHA);
        gc.fillPolygon(outline);
        gc.setAlpha(255);
    }

    Control control() {
        return chart;
    }

    /** Names of the lines that the legend lists, for tests. */
    public List<String> legend() {
        List<String> names = new ArrayList<>();
        for (ISeries<?> series : chart.getSeriesSet().getSeries()) {
            if (series.isVisibleInLegend()) {
                names.add(series.getId());
            }
        }
        return names;
    }

    /** The heads that are drawn for a line of the legend, for tests. */
    public double[] drawn(String name) {
        return chart.getSeriesSet().getSeries(name).getYSeries();
    }
}

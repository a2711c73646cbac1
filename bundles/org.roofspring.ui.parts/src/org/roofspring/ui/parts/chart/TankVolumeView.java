package org.roofspring.ui.parts.chart;

import java.time.LocalDate;
import java.util.Optional;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.ui.field.DisplayUnits;
import org.roofspring.ui.look.Icons;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.part.SessionView;
import org.roofspring.ui.session.Aspect;
import org.roofspring.ui.session.SiteSession;

/**
 * The volume of water in all tanks, or in the selected one, day by day over the record. While a newer trace is being computed the old one stays
 * and is marked as out of date; it also stays, so marked, when the edited design has no answer.
 */
public final class TankVolumeView extends SessionView {
    private VolumeChart chart;
    private Label state;
    private Label reading;
    private SiteSession shownSession;

    public TankVolumeView() {
        super(Aspect.RESULTS, Aspect.SELECTION);
    }

    @Override
    protected void createContent(Composite parent) {
        Composite line = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 4).applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        state = new Label(line, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(state);
        reading = new Label(line, SWT.RIGHT);
        reading.setForeground(Palette.of(line).muted());
        GridDataFactory.fillDefaults().hint(220, SWT.DEFAULT).applyTo(reading);
        chart = new VolumeChart(parent, this::read);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(chart.control());
        IToolBarManager bar = getViewSite().getActionBars().getToolBarManager();
        bar.add(action("Show a shorter time", "zoom-in", () -> chart.zoom(0.5)));
        bar.add(action("Show a longer time", "zoom-out", () -> chart.zoom(2)));
        bar.add(action("Show the whole record", "zoom-all", () -> chart.showAll()));
    }

    private static Action action(String text, String icon, Runnable run) {
        Action action = new Action(text, Icons.descriptor(icon)) {
            @Override
            public void run() {
                run.run();
            }
        };
        action.setToolTipText(text);
        return action;
    }

    @Override
    protected void show(SiteSession session) {
        Optional<VolumeTrace> trace = VolumeTrace.of(session);
        Optional<CalculationResult> result = session.live().results().result(VolumeTrace.CALCULATION);
        boolean stale = session.live().outOfDate(VolumeTrace.CALCULATION);
        if (session != shownSession) {
            shownSession = session;
            chart.clear();
        }
        if (trace.isPresent()) {
            Unit unit = DisplayUnits.system(session.site()).preferred(trace.get().daily().unit());
            chart.show(trace.get(), unit, session.format().symbol(unit));
            chart.setStale(stale);
            say(span(trace.get()) + (stale ? "  \u2013  out of date, being calculated anew" : ""), stale);
        } else {
            chart.setStale(true);
            String why = result.map(r -> String.join(" ", r.reasons())).orElse("It is being calculated.");
            say((chart.isEmpty() ? "No volume to show yet. " : "Out of date: the design has no answer now. ") + why, true);
        }
    }

    private static String span(VolumeTrace trace) {
        LocalDate first = trace.daily().firstDay();
        String tanks = trace.title().substring(0, 1).toUpperCase(java.util.Locale.ROOT) + trace.title().substring(1) + ", ";
        return trace.daily().days() == 0 ? tanks + "an empty record" : tanks + first + " to " + first.plusDays(trace.daily().days() - 1L);
    }

    private void say(String text, boolean warn) {
        state.setText(text.replace("&", "&&"));
        state.setToolTipText(text);
        state.setForeground(warn ? Palette.of(state).warning() : Palette.of(state).muted());
    }

    /** Shows the value under the pointer. */
    private void read(LocalDate day, double volume, Unit unit) {
        String text = "";
        if (day != null && shownSession != null && !shownSession.closed()) {
            QuantityFormat format = shownSession.format();
            text = day + ":  " + format.format(Quantity.of(volume, unit));
        }
        reading.setText(text);
    }

    @Override
    protected void update(SiteSession session, Aspect aspect) {
        show(session);
    }

    @Override
    protected void forget() {
        shownSession = null;
        chart.clear();
    }

    /** The chart, for tests. */
    public VolumeChart chart() {
        return chart;
    }

    @Override
    public void setFocus() {
        chart.setFocus();
    }
}

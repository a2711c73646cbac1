package org.roofspring.calc.standard.drainage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Element;
import org.roofspring.site.Gutter;
import org.roofspring.site.GutterOutlet;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Site;

/**
 * All that is said of the way from roof to tank. A part that lacks something, or that no formula covers, is named with
 * the reason, and the rest of the way is still checked. Used by one thread.
 */
public final class RoofToTank {
    private final Site site;
    private final DesignStorm storm;
    private final double[] dailyMm;
    private final BooleanSupplier cancelled;
    private final RoofWays ways;
    private final AnswerBuilder answer = new AnswerBuilder(null);
    private final Map<Gutter, GutterCheck> checks = new LinkedHashMap<>();

    /**
     * @param site         the frozen site
     * @param storm        that the way is sized for
     * @param dailyMm      rain of each day, without gaps
     * @param cancelled    polled now and then
     */
    public RoofToTank(Site site, DesignStorm storm, double[] dailyMm, BooleanSupplier cancelled) {
        this.site = site;
        this.storm = storm;
        this.dailyMm = dailyMm;
        this.cancelled = cancelled;
        this.ways = new RoofWays(site);
    }

    /** @throws CancellationException when cancelled */
    public Outcome.Completed answer() {
        answer.include(storm.answer());
        ways.problems().forEach((part, reason) -> notChecked((NamedElement) part, reason));
        gutters();
        double intensity = storm.intensityMmPerH();
        site.getDownpipes().stream().filter(this::fed)
                .forEach(pipe -> tried(pipe, () -> WayFindings.downpipe(pipe, ways.at(pipe), intensity)));
        RoofWays through = new RoofWays(site, passes()::get);
        site.getScreens().stream().filter(this::fed)
                .forEach(screen -> tried(screen, () -> WayFindings.screen(screen, through.at(screen), intensity)));
        site.getDiverters().stream().filter(this::fed)
                .forEach(diverter -> tried(diverter, () -> WayFindings.diverter(diverter, ways.at(diverter))));
        site.getTanks().stream().filter(this::fed)
                .forEach(tank -> answer.include(WayFindings.tank(tank, through.at(tank), intensity)));
        site.getTanks().stream().filter(this::fed).filter(tank -> SoakawayFindings.sized(tank.getSiting()))
                .forEach(tank -> tried(tank, () -> SoakawayFindings.of(tank, ways.at(tank), storm)));
        roofs();
        return answer.build();
    }

    /** What gets through to each outlet and on; all of it where that is not known. */
    private Map<GutterOutlet, Double> passes() {
        Map<GutterOutlet, Double> shares = new HashMap<>();
        site.getGutters().forEach(gutter -> gutter.getOutlets().forEach(outlet -> shares.put(outlet, 1.0)));
        checks.values().forEach(check -> check.runs()
                .forEach(run -> shares.put(run.reach().outlet(), run.mostShare())));
        return shares;
    }

    private boolean fed(Element part) {
        return ways.at(part) != Arriving.NOTHING;
    }

    private void gutters() {
        GutterCheck.Checker checker = new GutterCheck.Checker(ways, storm, dailyMm, cancelled);
        List<List<Object>> rows = new ArrayList<>();
        for (Gutter gutter : ways.gutters(site)) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException();
            }
            if (!ways.problems().containsKey(gutter)) {
                tried(gutter, () -> {
                    GutterCheck check = checker.check(gutter);
                    Outcome.Completed said = GutterFindings.of(check, storm, checker.solver());
                    checks.put(gutter, check);
                    check.runs().forEach(run -> rows.add(row(gutter, run)));
                    return said;
                });
            }
        }
        if (!rows.isEmpty()) {
            answer.add("ways", "From gutters to the ground in the design storm", new FindingValue.Table(
                    List.of("Gutter", "Outlet", "Leads to", "Arrives", "Gets through", "Utilisation", "Limit"), rows));
        }
    }

    private static List<Object> row(Gutter gutter, OutletRun run) {
        var to = run.reach().outlet().getTo();
        return Arrays.asList(Names.of(gutter), Names.of(run.reach().outlet()), to == null ? null : Names.of(to),
                Quantity.ofSi(run.flowM3PerS(), Units.L_PER_S), Quantity.ofSi(run.capacityM3PerS(), Units.L_PER_S),
                Quantity.ofSi(run.utilisation(), Units.PERCENT), run.limit().words());
    }

    private void roofs() {
        List<RoofCollection> all = new ArrayList<>();
        for (RoofArea area : ways.roofs().values()) {
            RoofCollection collection = RoofCollection.of(area, storm, checks);
            answer.include(collection.answer());
            all.add(collection);
            if (!area.sloped()) {
                answer.caution(new Caution("roof.wind-not-counted", Severity.INFO, area.roof().getId(),
                        "Length of eaves and slope of {0} are not both given, so rain driven by wind is not counted.",
                        List.of(Names.of(area.roof())), "", area.step().source()));
            }
        }
        RoofCollection.totals(all).ifPresent(answer::include);
    }

    private void tried(NamedElement part, Supplier<Outcome.Completed> check) {
        try {
            answer.include(check.get());
        } catch (IllegalArgumentException e) {
            notChecked(part, e.getMessage());
        }
    }

    private void notChecked(NamedElement part, String reason) {
        answer.caution(new Caution("drainage.not-checked", Severity.WARNING, part.getId(),
                "{0} cannot be checked: {1}.",
                List.of(Names.of(part), reason), "", Source.definition("what is known of the site")));
    }
}

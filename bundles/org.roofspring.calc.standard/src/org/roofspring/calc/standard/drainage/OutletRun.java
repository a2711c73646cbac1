package org.roofspring.calc.standard.drainage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.roofspring.calc.standard.water.Given;
import org.roofspring.drainage.Downpipe;
import org.roofspring.drainage.GutterCapacity;
import org.roofspring.drainage.GutterOutlet;
import org.roofspring.drainage.GutterRun;
import org.roofspring.drainage.OutletLayout;
import org.roofspring.site.Gutter;
import org.roofspring.site.OutletShape;
import org.roofspring.site.SitePackage;

/**
 * One outlet of a gutter with what leads to it and away from it. All flows are those at the outlet, both sides of the
 * gutter together; where the sides differ in length the shorter is taken to be as loaded as the longer.
 *
 * @param reach          of the gutter
 * @param run            as the kernel sees it, or null where the end of the gutter is free
 * @param gutter         what the longer side carries with a free outlet
 * @param gutterM3PerS   arriving flow at which that side is full
 * @param outletM3PerS   arriving flow at which the outlet holds the water up to the brim; infinite at a free end
 * @param downpipeM3PerS this outlet's part of what the downpipe carries; infinite without one
 * @param flowM3PerS     that arrives in the design storm
 */
record OutletRun(Reach reach, GutterRun run, GutterCapacity gutter, double gutterM3PerS, double outletM3PerS,
        double downpipeM3PerS, double flowM3PerS) {
    /** What corners leave of a gutter's capacity: EN 12056-3:2000, from memory. */
    static final double CORNER_RATIO = 0.85;

    /** What limits the way through an outlet. */
    enum Limit {
        GUTTER("the gutter"), OUTLET("the outlet"), DOWNPIPE("the downpipe");

        private final String words;

        Limit(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** Solves each run once: gutters of a site are often alike. Used by one thread. */
    static final class Solver {
        private final Map<GutterRun, GutterRun.Capacity> capacities = new HashMap<>();
        private final Map<List<Object>, OutletLayout> layouts = new HashMap<>();

        GutterRun.Capacity capacity(GutterRun run) {
            return capacities.computeIfAbsent(run, GutterRun::capacity);
        }

        /** The layout with the fewest outlets; arguments and exception as in {@link OutletLayout#fewest}. */
        OutletLayout layout(double lengthM, double flowM3PerS, double mostUtilisation, GutterRun like) {
            return layouts.computeIfAbsent(List.of(lengthM, flowM3PerS, mostUtilisation, like),
                    key -> OutletLayout.fewest(lengthM, flowM3PerS, mostUtilisation, like));
        }
    }

    /**
     * @param factor        by which the gutter is larger than the site's
     * @param flowM3PerS    that arrives at the outlet
     * @param downpipeShare of its downpipe's water that comes from this outlet
     * @throws IllegalArgumentException when something is missing or cannot be, in words that follow "name: "
     */
    static OutletRun of(Gutter gutter, Reach reach, double factor, double flowM3PerS, double downpipeShare,
            Solver solver) {
        org.roofspring.drainage.Gutter stretch = GutterShape.stretch(gutter, reach.longestM(), factor);
        double corners = gutter.getBends() > 0 ? CORNER_RATIO : 1;
        double perLongest = reach.wholeM() / reach.longestM();
        Downpipe downpipe = reach.outlet().getTo() instanceof org.roofspring.site.Downpipe pipe ? of(pipe) : null;
        double piped = downpipe == null || downpipeShare <= 0 ? Double.POSITIVE_INFINITY
                : downpipe.capacityM3PerS() * downpipeShare;
        if (reach.outlet().getShape() == OutletShape.FREE_END) {
            GutterCapacity capacity = GutterCapacity.of(stretch);
            return new OutletRun(reach, null, capacity, capacity.capacityM3PerS() * corners * perLongest,
                    Double.POSITIVE_INFINITY, piped, flowM3PerS);
        }
        GutterOutlet outlet = new GutterOutlet(diameterM(reach), reach.outlet().isStrainer());
        // the kernel wants some downpipe; where there is none its capacity is not looked at
        GutterRun run = new GutterRun(stretch, outlet, downpipe == null ? new Downpipe(outlet.diameterM()) : downpipe,
                reach.sides());
        GutterRun.Capacity capacity = solver.capacity(run);
        return new OutletRun(reach, run, capacity.gutter(), capacity.gutter().capacityM3PerS() * corners * perLongest,
                capacity.outletM3PerS() * perLongest, piped, flowM3PerS);
    }

    private static double diameterM(Reach reach) {
        if (reach.outlet().getDiameter() == null) {
            throw new IllegalArgumentException("the diameter of its outlet is missing");
        }
        return reach.outlet().getDiameter().si();
    }

    static Downpipe of(org.roofspring.site.Downpipe pipe) {
        if (pipe.getBore() == null) {
            throw new IllegalArgumentException("the bore of its downpipe is missing");
        }
        return new Downpipe(pipe.getBore().si(), Given.si(pipe, SitePackage.Literals.DOWNPIPE__FILL_SHARE,
                Downpipe.DEFAULT_FILL_RATIO), Downpipe.DEFAULT_ROUGHNESS_MM);
    }

    /** The most that gutter, outlet and downpipe let through. */
    double capacityM3PerS() {
        return Math.min(gutterM3PerS, Math.min(outletM3PerS, downpipeM3PerS));
    }

    /** Share of the arriving flow that at most gets through, by the solved flow, which has no allowance. */
    double mostShare() {
        double perCapacity = gutterM3PerS / gutter.capacityM3PerS();
        double most = Math.min(Math.max(gutterM3PerS, gutter.variedFlowM3PerS() * perCapacity),
                Math.min(outletM3PerS, downpipeM3PerS));
        return flowM3PerS <= most ? 1 : most / flowM3PerS;
    }

    Limit limit() {
        double least = capacityM3PerS();
        return gutterM3PerS == least ? Limit.GUTTER : outletM3PerS == least ? Limit.OUTLET : Limit.DOWNPIPE;
    }

    double utilisation() {
        return flowM3PerS / capacityM3PerS();
    }
}

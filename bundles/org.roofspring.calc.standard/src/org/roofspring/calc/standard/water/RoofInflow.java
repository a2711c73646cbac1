package org.roofspring.calc.standard.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

import org.roofspring.site.Conduit;
import org.roofspring.site.FirstFlushDiverter;
import org.roofspring.site.Gutter;
import org.roofspring.site.GutterOutlet;
import org.roofspring.site.Receiver;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofDrain;
import org.roofspring.site.Screen;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.storage.CatchmentInflow;
import org.roofspring.storage.FirstFlush;

/**
 * Water that the roofs send to each tank, day by day: runoff of each roof, shared among its drains, less what gutters
 * and screens lose and what first-flush diverters take. A diverter that several roofs share takes from their sum.
 */
public final class RoofInflow {
    private static final double SECONDS_PER_DAY = 86_400;
    private static final double LITRES_TO_M3 = 0.001;

    private final Map<Tank, double[]> byTank = new HashMap<>();
    private double divertedM3;
    private double runoffM3;
    private final List<Roof> unconnected = new ArrayList<>();

    private RoofInflow() {
    }

    /**
     * @param site       the frozen site
     * @param depthMm    rain of each day, without gaps
     * @param efficiency share of each roof's runoff that gets past its gutters
     */
    public static RoofInflow of(Site site, double[] depthMm, ToDoubleFunction<Roof> efficiency) {
        RoofInflow inflow = new RoofInflow();
        Map<FirstFlushDiverter, double[]> atDiverter = new HashMap<>();
        Map<FirstFlushDiverter, Double> areaAtDiverter = new HashMap<>();
        for (Roof roof : site.getRoofs()) {
            if (roof.isInUse() && roof.getPlanArea() != null) {
                inflow.addRoof(roof, depthMm, efficiency.applyAsDouble(roof), atDiverter, areaAtDiverter);
            }
        }
        for (FirstFlushDiverter diverter : site.getDiverters()) {
            if (atDiverter.containsKey(diverter)) {
                inflow.passDiverter(diverter, atDiverter.get(diverter), areaAtDiverter.get(diverter));
            }
        }
        return inflow;
    }

    private void addRoof(Roof roof, double[] depthMm, double efficiency, Map<FirstFlushDiverter, double[]> atDiverter,
            Map<FirstFlushDiverter, Double> areaAtDiverter) {
        double areaM2 = roof.getPlanArea().si();
        double runoff = Given.si(roof, SitePackage.Literals.ROOF__RUNOFF_COEFFICIENT, 0.8);
        double lossMm = Given.si(roof, SitePackage.Literals.ROOF__INITIAL_LOSS, 0) * 1000;
        double[] offRoof = new CatchmentInflow(areaM2, runoff, lossMm).inflowM3(depthMm);
        runoffM3 += sum(offRoof);
        boolean connected = false;
        for (RoofDrain drain : roof.getDrains()) {
            double share = DrainShares.of(roof, drain);
            for (Path path : paths(drain.getTo(), share * efficiency, new HashSet<>())) {
                connected = true;
                if (path.diverter() != null) {
                    addTo(atDiverter, path.diverter(), offRoof, path.share());
                    areaAtDiverter.merge(path.diverter(), areaM2 * share, Double::sum);
                } else {
                    addTo(byTank, path.tank(), offRoof, path.share());
                }
            }
        }
        if (!connected) {
            unconnected.add(roof);
        }
    }

    /** Where a share of a roof's water ends: at the first diverter on its way, or in a tank. */
    private record Path(FirstFlushDiverter diverter, Tank tank, double share) {
    }

    private static List<Path> paths(Receiver receiver, double share, Set<Receiver> seen) {
        if (receiver == null || !receiver.isInUse() || share <= 0 || !seen.add(receiver)) {
            return List.of();
        }
        return switch (receiver) {
            case Tank tank -> List.of(new Path(null, tank, share));
            case FirstFlushDiverter diverter -> List.of(new Path(diverter, null, share));
            case Screen screen -> paths(screen.getDrainsTo(), share * (1 - Given.si(screen, SitePackage.Literals.SCREEN__LOST_SHARE, 0)), seen);
            case Conduit conduit -> paths(conduit.getDrainsTo(), share, seen);
            case Gutter gutter -> {
                List<Path> all = new ArrayList<>();
                List<GutterOutlet> outlets = gutter.getOutlets().stream().filter(outlet -> outlet.getTo() != null).toList();
                for (GutterOutlet outlet : outlets) {
                    all.addAll(paths(outlet.getTo(), share / outlets.size(), new HashSet<>(seen)));
                }
                yield all;
            }
            default -> List.of();
        };
    }

    private void passDiverter(FirstFlushDiverter diverter, double[] arriving, double areaM2) {
        double volumeM3 = diverter.getVolume() != null ? diverter.getVolume().si()
                : Given.si(diverter, SitePackage.Literals.FIRST_FLUSH_DIVERTER__DEPTH, 0) * 1000 * areaM2 * LITRES_TO_M3;
        double resetS = Given.si(diverter, SitePackage.Literals.FIRST_FLUSH_DIVERTER__RESET_DRY_DAYS, 0);
        FirstFlush.Split split = new FirstFlush(volumeM3, (int) Math.round(resetS / SECONDS_PER_DAY)).split(arriving);
        divertedM3 += sum(split.divertedM3());
        for (Path path : paths(diverter.getDrainsTo(), 1, new HashSet<>())) {
            if (path.tank() != null) {
                addTo(byTank, path.tank(), split.inflowM3(), path.share());
            }
        }
    }

    private static <K> void addTo(Map<K, double[]> series, K key, double[] values, double share) {
        double[] sum = series.computeIfAbsent(key, k -> new double[values.length]);
        for (int day = 0; day < values.length; day++) {
            sum[day] += values[day] * share;
        }
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    /** Inflow of a tank [m3] on each day, or null where no roof reaches it. */
    public double[] toTank(Tank tank) {
        return byTank.get(tank);
    }

    /** Tanks that roofs reach. */
    public Set<Tank> tanks() {
        return byTank.keySet();
    }

    /** Inflow of all tanks over the record [m3]. */
    public double totalM3() {
        return byTank.values().stream().mapToDouble(RoofInflow::sum).sum();
    }

    /** Runoff of all roofs over the record [m3]. */
    public double runoffM3() {
        return runoffM3;
    }

    /** Thrown away by diverters over the record [m3]. */
    public double divertedM3() {
        return divertedM3;
    }

    /** Lost in gutters and screens, or for want of a way to a tank, over the record [m3]. */
    public double lostM3() {
        return runoffM3 - divertedM3 - totalM3();
    }

    /** Roofs whose water reaches no tank. */
    public List<Roof> unconnected() {
        return List.copyOf(unconnected);
    }
}

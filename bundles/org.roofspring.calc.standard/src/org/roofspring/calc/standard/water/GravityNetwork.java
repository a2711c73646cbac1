package org.roofspring.calc.standard.water;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.roofspring.calc.Outcome.Problem;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.gravity.GravityTree;
import org.roofspring.hydraulics.gravity.Node;
import org.roofspring.hydraulics.gravity.Outlet;
import org.roofspring.hydraulics.gravity.Reach;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Junction;
import org.roofspring.site.NamedElement;
import org.roofspring.site.PipeNode;
import org.roofspring.site.PipeRun;
import org.roofspring.site.PressureVessel;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.site.Tap;
import org.roofspring.site.TreatmentTrain;

/**
 * The taps that a tank or pressure vessel feeds through pipes and filters, as the hydraulics kernel sees them. Parts that
 * are not in use, pumps, and other tanks end the way.
 */
public final class GravityNetwork {
    /** Discharge coefficient of a tap given by its opening: a sharp edge (textbook, from memory). */
    private static final double TAP_DISCHARGE = 0.61;
    private static final double PASCAL_PER_M = 9806.65;

    private final PipeNode source;
    private final List<PipeRun> runs = new ArrayList<>();
    private final Set<PipeNode> reached = new LinkedHashSet<>();
    private final Map<NamedElement, String> labels = new HashMap<>();
    private final Set<String> usedLabels = new HashSet<>();
    private final Map<String, PipeRun> runOfReach = new LinkedHashMap<>();
    private final Map<Tap, Outlet> outlets = new LinkedHashMap<>();
    private GravityTree tree;

    private GravityNetwork(Site site, PipeNode source) {
        this.source = source;
        walk(site);
    }

    /** The supply from a part that has at least one tap beyond it, not yet built; absent where it has none. */
    public static Optional<GravityNetwork> from(Site site, PipeNode source) {
        GravityNetwork network = new GravityNetwork(site, source);
        return network.taps().isEmpty() ? Optional.empty() : Optional.of(network);
    }

    /** Tanks and vessels that may feed taps. */
    public static List<PipeNode> sources(Site site) {
        List<PipeNode> sources = new ArrayList<>();
        site.getTanks().stream().filter(Tank::isInUse).forEach(sources::add);
        site.getPressureVessels().stream().filter(PressureVessel::isInUse).forEach(sources::add);
        return sources;
    }

    private void walk(Site site) {
        List<PipeRun> all = site.getPipeRuns().stream()
                .filter(run -> run.isInUse() && run.getFrom() != null && run.getTo() != null).toList();
        Set<PipeRun> taken = new HashSet<>();
        Deque<PipeNode> open = new ArrayDeque<>(List.of(source));
        reached.add(source);
        while (!open.isEmpty()) {
            PipeNode node = open.remove();
            for (PipeRun run : all) {
                if (run.getFrom() == node && carries(run.getTo()) && taken.add(run)) {
                    runs.add(run);
                    if (reached.add(run.getTo())) {
                        open.add(run.getTo());
                    }
                }
            }
        }
    }

    private static boolean carries(PipeNode node) {
        return node.isInUse() && (node instanceof Junction || node instanceof TreatmentTrain || node instanceof Tap);
    }

    /**
     * Builds the tree.
     *
     * @return what is missing or wrong, each in a sentence; empty where the tree is there
     */
    public List<Problem> build() {
        List<Problem> problems = new ArrayList<>();
        for (PipeRun run : runs) {
            PipeLosses.missing(run).forEach(sentence -> problems.add(new Problem(run.getId(),
                    run.getBore() == null ? "bore" : "length", sentence)));
        }
        reached.stream().filter(node -> node != source && level(node) == null).forEach(node -> problems
                .add(new Problem(node.getId(), "level", "The level of " + name(node) + " is missing.")));
        taps().stream().filter(tap -> tap.getDesignFlow() == null).forEach(tap -> problems.add(new Problem(tap.getId(),
                "designFlow", "The flow that people expect of " + tap.getName() + " is missing.")));
        if (openTaps().isEmpty()) {
            problems.add(new Problem(source.getId(), null, "No tap beyond " + name(source) + " is ever open."));
        }
        if (problems.isEmpty()) {
            try {
                tree = made();
            } catch (IllegalArgumentException e) {
                problems.add(new Problem(source.getId(), null, "From " + name(source) + ": " + e.getMessage() + "."));
            }
        }
        return problems;
    }

    private GravityTree made() {
        List<Node> nodes = new ArrayList<>();
        List<Reach> reaches = new ArrayList<>();
        for (PipeNode node : reached) {
            double elevationM = elevationM(node);
            nodes.add(new Node(label(node), elevationM));
            if (node instanceof TreatmentTrain train) {
                nodes.add(new Node(behind(train), elevationM));
                reaches.add(new Reach(label(train), label(train), behind(train), List.of(), FilterLosses.clean(train),
                        FilterLosses.fouled(train)));
            }
        }
        for (PipeRun run : runs) {
            String from = run.getFrom() instanceof TreatmentTrain train ? behind(train) : label(run.getFrom());
            reaches.add(new Reach(label(run), from, label(run.getTo()), List.of(PipeLosses.ageing(run)), HeadLoss.none(),
                    HeadLoss.none()));
            runOfReach.put(label(run), run);
        }
        for (Tap tap : openTaps()) {
            outlets.put(tap, outlet(tap));
        }
        return GravityTree.of(label(source), nodes, reaches, List.copyOf(outlets.values()));
    }

    private Outlet outlet(Tap tap) {
        int open = open(tap);
        double flowM3PerS = tap.getDesignFlow().si();
        double leastM = Math.max(1e-3, Given.si(tap, SitePackage.Literals.TAP__MINIMUM_HEAD, PASCAL_PER_M) / PASCAL_PER_M);
        HeadLoss one = tap.getOrifice() != null ? HeadLoss.orifice(tap.getOrifice().si(), TAP_DISCHARGE)
                : tap.getLossCoefficient() != null ? valve(tap) : HeadLoss.rated(flowM3PerS, leastM, 2);
        return new Outlet(label(tap), label(tap), one.inParallel(open), flowM3PerS * open);
    }

    private HeadLoss valve(Tap tap) {
        PipeRun feed = runs.stream().filter(run -> run.getTo() == tap).findFirst().orElseThrow();
        return new org.roofspring.hydraulics.PipeRun(feed.getBore().si(), 0, 0, tap.getLossCoefficient().si())
                .carrying(WaterProperties.at(20));
    }

    /** How many outlets of a tap run together in a peak. */
    public static int open(Tap tap) {
        int count = Math.max(1, tap.getCount());
        return tap.eIsSet(SitePackage.Literals.TAP__OPEN_TOGETHER) ? Math.min(count, tap.getOpenTogether()) : count;
    }

    private List<Tap> openTaps() {
        return taps().stream().filter(tap -> open(tap) > 0).toList();
    }

    private static Quantity level(PipeNode node) {
        return switch (node) {
            case Tank tank -> Quantity.of(TankWater.floorM(tank) + TankWater.outletHeightM(tank), Units.M);
            case PressureVessel vessel -> vessel.getLevel();
            case Junction junction -> junction.getLevel();
            case TreatmentTrain train -> train.getLevel();
            case Tap tap -> tap.getLevel();
            case Pump pump -> pump.getLevel();
            default -> null;
        };
    }

    private static double elevationM(PipeNode node) {
        return level(node).si();
    }

    private String behind(TreatmentTrain train) {
        return label(train) + ", outlet";
    }

    /** The name of a part, made unlike that of every other part. */
    private String label(NamedElement element) {
        return labels.computeIfAbsent(element, key -> {
            String name = name(key);
            String label = usedLabels.contains(name) ? name + " (" + key.getId() + ")" : name;
            usedLabels.add(label);
            return label;
        });
    }

    private static String name(NamedElement element) {
        return element.getName() == null || element.getName().isBlank() ? element.getId() : element.getName();
    }

    /** Tank or vessel that feeds it. */
    public PipeNode source() {
        return source;
    }

    /** All taps beyond it, open in a peak or not. */
    public List<Tap> taps() {
        return reached.stream().filter(Tap.class::isInstance).map(Tap.class::cast).toList();
    }

    /** The outlet of each tap that runs in a peak. */
    public Map<Tap, Outlet> outlets() {
        return Collections.unmodifiableMap(outlets);
    }

    /** The tree, once built. */
    public GravityTree tree() {
        return tree;
    }

    /** The run of the site behind each reach of pipe. */
    public Map<String, PipeRun> runOfReach() {
        return Collections.unmodifiableMap(runOfReach);
    }

    /** Trains on the way, by the name of their reach. */
    public Map<String, TreatmentTrain> trains() {
        Map<String, TreatmentTrain> trains = new LinkedHashMap<>();
        reached.stream().filter(TreatmentTrain.class::isInstance).map(TreatmentTrain.class::cast)
                .forEach(train -> trains.put(label(train), train));
        return trains;
    }

    /** All runs of the site that belong to it. */
    public List<PipeRun> runs() {
        return List.copyOf(runs);
    }

    /** Level of the water that feeds it in ordinary use [m over the site datum]. */
    public double usualLowLevelM(WaterProperties water) {
        return source instanceof PressureVessel vessel ? vessel.getLevel().si() + water.headM(vessel.getCutIn().si())
                : TankWater.floorM((Tank) source) + TankWater.usualLowHeightM((Tank) source);
    }
}

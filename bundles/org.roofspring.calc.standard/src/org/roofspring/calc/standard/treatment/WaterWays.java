package org.roofspring.calc.standard.treatment;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.roofspring.calc.standard.water.PipePaths;
import org.roofspring.site.Component;
import org.roofspring.site.Conduit;
import org.roofspring.site.Gutter;
import org.roofspring.site.GutterOutlet;
import org.roofspring.site.PipeNode;
import org.roofspring.site.PipeRun;
import org.roofspring.site.Receiver;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofDrain;
import org.roofspring.site.Site;
import org.roofspring.site.Tank;
import org.roofspring.site.TankLink;
import org.roofspring.site.TankLinkKind;
import org.roofspring.site.Tap;
import org.roofspring.site.TopUp;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.Use;

/** Finds the way of the water from roofs and tanks through treatment to each use. */
final class WaterWays {
    /** What lies between the tanks and a tap. */
    private record Branch(List<TreatmentTrain> trains, List<Tank> stores, Optional<Tank> tank) {
    }

    private final Site site;
    private final PipePaths paths;
    private final List<PipeRun> runs;

    WaterWays(Site site) {
        this.site = site;
        this.paths = new PipePaths(site);
        this.runs = inUse(site.getPipeRuns()).stream().filter(run -> run.getFrom() != null && run.getTo() != null)
                .toList();
    }

    WaterWay of(Use use) {
        List<Tap> taps = inUse(use.getTaps());
        List<Branch> branches = taps.stream().map(tap -> branch(tap, new HashSet<>())).toList();
        List<TreatmentTrain> trains = new ArrayList<>(branches.isEmpty() ? List.of() : branches.get(0).trains());
        branches.forEach(branch -> trains.retainAll(branch.trains()));
        TreatmentTrain stated = use.getTrain();
        if (stated != null && stated.isInUse() && !trains.contains(stated)) {
            trains.add(stated);
        }
        List<Tap> bypassing = new ArrayList<>();
        for (int i = 0; i < taps.size(); i++) {
            List<TreatmentTrain> passed = branches.get(i).trains();
            if (trains.stream().anyMatch(train -> !train.isBatch() && !passed.contains(train))) {
                bypassing.add(taps.get(i));
            }
        }
        Set<Tank> stores = new LinkedHashSet<>();
        branches.forEach(branch -> stores.addAll(branch.stores()));
        Set<Tank> tanks = upstream(starts(use, branches));
        return new WaterWay(trains, bypassing, List.copyOf(stores), List.copyOf(tanks), roofs(tanks), topUps(tanks),
                pipes(taps));
    }

    private List<Tank> starts(Use use, List<Branch> branches) {
        if (use.getTank() != null && use.getTank().isInUse()) {
            return List.of(use.getTank());
        }
        List<Tank> known = branches.stream().flatMap(branch -> branch.tank().stream()).distinct().toList();
        return known.isEmpty() ? inUse(site.getTanks()) : known;
    }

    /** Trains up to the first tank and on, as long as a tank is filled by nothing but one pipe. */
    private Branch branch(PipeNode node, Set<PipeNode> seen) {
        seen.add(node);
        List<PipeRun> path = paths.upstream(node, Tank.class::isInstance)
                .or(() -> paths.upstream(node, TreatmentTrain.class::isInstance)).orElse(List.of());
        List<TreatmentTrain> trains = path.stream().map(PipeRun::getFrom).filter(TreatmentTrain.class::isInstance)
                .map(TreatmentTrain.class::cast).filter(TreatmentTrain::isInUse).toList();
        if (path.isEmpty() || !(path.get(0).getFrom() instanceof Tank tank)) {
            return new Branch(trains, List.of(), Optional.empty());
        }
        if (!seen.add(tank) || !filledByOnePipe(tank)) {
            return new Branch(trains, List.of(), Optional.of(tank));
        }
        Branch before = branch(tank, seen);
        List<TreatmentTrain> all = new ArrayList<>(before.trains());
        all.addAll(trains);
        List<Tank> stores = new ArrayList<>(before.stores());
        if (!before.trains().isEmpty()) {
            stores.add(tank);
        }
        return new Branch(all, stores, Optional.of(tank));
    }

    private boolean filledByOnePipe(Tank tank) {
        return runs.stream().filter(run -> run.getTo() == tank).count() == 1
                && inUse(site.getTankLinks()).stream().noneMatch(link -> link.getTo() == tank
                        || link.getKind() == TankLinkKind.JOINED && link.getFrom() == tank)
                && inUse(site.getTanks()).stream().noneMatch(other -> reached(other.getOverflowsTo()).contains(tank))
                && inUse(site.getTopUps()).stream().noneMatch(topUp -> topUp.getTank() == tank)
                && inUse(site.getRoofs()).stream().noneMatch(roof -> tanks(roof).contains(tank));
    }

    /** These tanks and all that water can come from into them: by pipe, link or overflow. */
    private Set<Tank> upstream(Collection<Tank> starts) {
        Set<Tank> found = new LinkedHashSet<>(starts);
        Deque<Tank> open = new ArrayDeque<>(starts);
        while (!open.isEmpty()) {
            for (Tank source : sources(open.remove())) {
                if (found.add(source)) {
                    open.add(source);
                }
            }
        }
        return found;
    }

    private Set<Tank> sources(Tank tank) {
        Set<Tank> sources = new LinkedHashSet<>();
        for (PipeNode node : before(List.of(tank))) {
            if (node instanceof Tank other) {
                sources.add(other);
            }
        }
        for (TankLink link : inUse(site.getTankLinks())) {
            if (link.getTo() == tank && link.getFrom() != null) {
                sources.add(link.getFrom());
            } else if (link.getKind() == TankLinkKind.JOINED && link.getFrom() == tank && link.getTo() != null) {
                sources.add(link.getTo());
            }
        }
        inUse(site.getTanks()).stream().filter(other -> reached(other.getOverflowsTo()).contains(tank))
                .forEach(sources::add);
        return sources;
    }

    private Set<PipeNode> before(List<? extends PipeNode> nodes) {
        Set<PipeNode> seen = new LinkedHashSet<>(nodes);
        Deque<PipeNode> open = new ArrayDeque<>(nodes);
        while (!open.isEmpty()) {
            PipeNode node = open.remove();
            runs.stream().filter(run -> run.getTo() == node).map(PipeRun::getFrom).filter(seen::add)
                    .forEach(open::add);
        }
        return seen;
    }

    private List<PipeRun> pipes(List<Tap> taps) {
        Set<PipeNode> nodes = before(taps);
        return runs.stream().filter(run -> nodes.contains(run.getTo())).toList();
    }

    /** Roofs that drain into one of the tanks; one that does not say where it drains counts for every tank. */
    private List<Roof> roofs(Set<Tank> tanks) {
        return inUse(site.getRoofs()).stream().filter(roof -> roof.getDrains().isEmpty()
                || tanks(roof).stream().anyMatch(tanks::contains)).toList();
    }

    private static Set<Tank> tanks(Roof roof) {
        Set<Tank> tanks = new HashSet<>();
        roof.getDrains().stream().map(RoofDrain::getTo).forEach(to -> tanks.addAll(reached(to)));
        return tanks;
    }

    private List<TopUp> topUps(Set<Tank> tanks) {
        return inUse(site.getTopUps()).stream()
                .filter(topUp -> topUp.getTank() == null || tanks.contains(topUp.getTank())).toList();
    }

    /** Tanks that water let into a receiver ends in. */
    private static Set<Tank> reached(Receiver start) {
        Set<Receiver> seen = new LinkedHashSet<>();
        Deque<Receiver> open = new ArrayDeque<>();
        if (start != null) {
            open.add(start);
        }
        Set<Tank> tanks = new LinkedHashSet<>();
        while (!open.isEmpty()) {
            Receiver receiver = open.remove();
            if (!receiver.isInUse() || !seen.add(receiver)) {
                continue;
            }
            switch (receiver) {
                case Tank tank -> tanks.add(tank);
                case Gutter gutter -> gutter.getOutlets().stream().map(GutterOutlet::getTo)
                        .filter(to -> to != null).forEach(open::add);
                case Conduit conduit when conduit.getDrainsTo() != null -> open.add(conduit.getDrainsTo());
                default -> { }
            }
        }
        return tanks;
    }

    private static <C extends Component> List<C> inUse(List<C> components) {
        return components.stream().filter(Component::isInUse).toList();
    }
}

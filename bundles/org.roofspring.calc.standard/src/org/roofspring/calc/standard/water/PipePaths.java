package org.roofspring.calc.standard.water;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

import org.roofspring.site.PipeNode;
import org.roofspring.site.PipeRun;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;
import org.roofspring.site.Tank;

/** Follows runs of pipe from part to part. */
public final class PipePaths {
    private final List<PipeRun> runs;

    public PipePaths(Site site) {
        runs = site.getPipeRuns().stream().filter(run -> run.isInUse() && run.getFrom() != null && run.getTo() != null).toList();
    }

    /** The runs from a part to the first part downstream that fits, in order; empty where there is none. */
    public Optional<List<PipeRun>> downstream(PipeNode from, Predicate<PipeNode> wanted) {
        return search(from, wanted, true);
    }

    /** The runs from the first part upstream that fits down to a part, in order; empty where there is none. */
    public Optional<List<PipeRun>> upstream(PipeNode to, Predicate<PipeNode> wanted) {
        return search(to, wanted, false);
    }

    /** The tank that feeds a part by pipe, through pumps or by gravity. */
    public Optional<Tank> feedingTank(PipeNode part) {
        return part instanceof Tank tank ? Optional.of(tank)
                : upstream(part, Tank.class::isInstance).map(path -> (Tank) path.get(0).getFrom());
    }

    /** The tank that a pump delivers to. */
    public Optional<Tank> deliveredTank(Pump pump) {
        return downstream(pump, Tank.class::isInstance).map(path -> (Tank) path.get(path.size() - 1).getTo());
    }

    private Optional<List<PipeRun>> search(PipeNode start, Predicate<PipeNode> wanted, boolean down) {
        Deque<List<PipeRun>> open = new ArrayDeque<>();
        Set<PipeNode> seen = new HashSet<>();
        seen.add(start);
        open.add(List.of());
        while (!open.isEmpty()) {
            List<PipeRun> path = open.remove();
            PipeNode end = path.isEmpty() ? start : down ? path.get(path.size() - 1).getTo() : path.get(0).getFrom();
            if (!path.isEmpty() && wanted.test(end)) {
                return Optional.of(path);
            }
            for (PipeRun run : runs) {
                PipeNode next = down ? run.getTo() : run.getFrom();
                if ((down ? run.getFrom() : run.getTo()) == end && seen.add(next)) {
                    List<PipeRun> longer = new ArrayList<>(path);
                    longer.add(down ? longer.size() : 0, run);
                    open.add(List.copyOf(longer));
                }
            }
        }
        return Optional.empty();
    }
}

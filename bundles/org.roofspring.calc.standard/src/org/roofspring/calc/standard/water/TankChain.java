package org.roofspring.calc.standard.water;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

import org.roofspring.quantity.Units;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;
import org.roofspring.site.Tank;
import org.roofspring.site.TankLink;
import org.roofspring.site.TankLinkKind;

/**
 * The tanks of a site in the order water passes them: joined tanks form one stage, and pumps and links lead from each
 * stage to the next. Where the tanks do not form one chain they are taken together as one stage, which is said.
 */
public final class TankChain {
    /** More than any tank of a site holds in a day: a way without a stated limit. */
    private static final double NO_LIMIT_M3_PER_DAY = 1_000_000;

    /** A way from one stage to the next. */
    public record Way(double maxM3PerDay, boolean pumped) {
    }

    private final List<List<Tank>> stages;
    private final List<Way> ways;
    private final boolean lumped;

    private TankChain(List<List<Tank>> stages, List<Way> ways, boolean lumped) {
        this.stages = List.copyOf(stages);
        this.ways = List.copyOf(ways);
        this.lumped = lumped;
    }

    /**
     * @param site       the frozen site
     * @param pumpM3PerDay what each pump can lift in a day, where it is known
     */
    public static TankChain of(Site site, Function<Pump, OptionalDouble> pumpM3PerDay) {
        List<Tank> tanks = site.getTanks().stream().filter(tank -> tank.isInUse() && tank.getCapacity() != null).toList();
        Map<Tank, List<Tank>> group = new HashMap<>();
        tanks.forEach(tank -> group.put(tank, new ArrayList<>(List.of(tank))));
        Map<List<Tank>, Map<List<Tank>, Way>> onward = new LinkedHashMap<>();
        List<TankLink> links = site.getTankLinks().stream().filter(link -> link.isInUse() && group.containsKey(link.getFrom())
                && group.containsKey(link.getTo())).toList();
        links.stream().filter(link -> link.getKind() == TankLinkKind.JOINED).forEach(link -> join(group, link.getFrom(), link.getTo()));
        for (TankLink link : links) {
            if (link.getKind() != TankLinkKind.JOINED) {
                lead(onward, group.get(link.getFrom()), group.get(link.getTo()), new Way(linkLimit(link), false));
            }
        }
        PipePaths paths = new PipePaths(site);
        for (Pump pump : site.getPumps()) {
            Optional<Tank> from = paths.feedingTank(pump);
            Optional<Tank> to = paths.deliveredTank(pump);
            if (pump.isInUse() && from.isPresent() && to.isPresent() && group.containsKey(from.get()) && group.containsKey(to.get())) {
                lead(onward, group.get(from.get()), group.get(to.get()), new Way(pumpM3PerDay.apply(pump).orElse(NO_LIMIT_M3_PER_DAY), true));
            }
        }
        Set<List<Tank>> groups = new LinkedHashSet<>();
        tanks.forEach(tank -> groups.add(group.get(tank)));
        return chain(new ArrayList<>(groups), onward).orElseGet(() -> new TankChain(List.of(tanks), List.of(), true));
    }

    private static void join(Map<Tank, List<Tank>> group, Tank a, Tank b) {
        List<Tank> first = group.get(a);
        List<Tank> second = group.get(b);
        if (first != second) {
            List<Tank> joined = new ArrayList<>(first);
            joined.addAll(second);
            joined.forEach(tank -> group.put(tank, joined));
        }
    }

    private static void lead(Map<List<Tank>, Map<List<Tank>, Way>> onward, List<Tank> from, List<Tank> to, Way way) {
        if (from != to) {
            onward.computeIfAbsent(from, key -> new LinkedHashMap<>()).merge(to, way,
                    (a, b) -> new Way(Math.min(NO_LIMIT_M3_PER_DAY, a.maxM3PerDay() + b.maxM3PerDay()), a.pumped() && b.pumped()));
        }
    }

    private static double linkLimit(TankLink link) {
        double limit = NO_LIMIT_M3_PER_DAY;
        if (link.getMaxFlow() != null) {
            limit = Math.min(limit, link.getMaxFlow().in(Units.M3_PER_D));
        }
        if (link.getDailyVolume() != null) {
            limit = Math.min(limit, link.getDailyVolume().in(Units.M3_PER_D));
        }
        return limit;
    }

    /** The groups in a row, if each but the last leads to exactly one other and each but the first is led to once. */
    private static Optional<TankChain> chain(List<List<Tank>> groups, Map<List<Tank>, Map<List<Tank>, Way>> onward) {
        if (groups.isEmpty()) {
            return Optional.of(new TankChain(List.of(), List.of(), false));
        }
        Set<List<Tank>> ledTo = new LinkedHashSet<>();
        onward.values().forEach(ways -> ledTo.addAll(ways.keySet()));
        List<List<Tank>> heads = groups.stream().filter(g -> !ledTo.contains(g)).toList();
        if (heads.size() != 1) {
            return Optional.empty();
        }
        List<List<Tank>> stages = new ArrayList<>(heads);
        List<Way> ways = new ArrayList<>();
        while (onward.containsKey(stages.get(stages.size() - 1))) {
            Map<List<Tank>, Way> next = onward.get(stages.get(stages.size() - 1));
            List<Tank> to = next.keySet().iterator().next();
            if (next.size() != 1 || stages.contains(to)) {
                return Optional.empty();
            }
            ways.add(next.get(to));
            stages.add(to);
        }
        return stages.size() == groups.size() ? Optional.of(new TankChain(stages, ways, false)) : Optional.empty();
    }

    /** Stages in order, each one tank or several joined; empty where the site has no tank. */
    public List<List<Tank>> stages() {
        return stages;
    }

    /** One way between each two stages. */
    public List<Way> ways() {
        return ways;
    }

    /** Whether the tanks form no chain and were taken together. */
    public boolean lumped() {
        return lumped;
    }

    /** Index of the stage a tank belongs to, or -1. */
    public int stageOf(Tank tank) {
        for (int i = 0; i < stages.size(); i++) {
            if (stages.get(i).contains(tank)) {
                return i;
            }
        }
        return -1;
    }

    /** Hours of power a day over 24: 1 where no times are given. */
    public static double supplyShare(Pump pump) {
        if (pump.getSupplyTimes().isEmpty()) {
            return 1;
        }
        double hours = 0;
        for (var time : pump.getSupplyTimes()) {
            if (time.getFrom() != null && time.getTo() != null) {
                double h = (time.getTo().toSecondOfDay() - time.getFrom().toSecondOfDay()) / 3600.0;
                double daysShare = time.getWeekdays().isEmpty() ? 1 : time.getWeekdays().size() / 7.0;
                hours += (h < 0 ? h + 24 : h) * daysShare;
            }
        }
        return Math.min(1, hours / 24);
    }
}

package org.roofspring.economy.stages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Orders and budgets, by hand and against every order tried. */
class StagePlanTest {
    private static StagePlan plan(List<StageOption> options, Reliability reliability) {
        return StagePlan.of(options, reliability, () -> false);
    }

    /** Shares 0.2, 0.5, 0.3 for 100, 100, 400: the second first, the dear one last. */
    @Test
    void mostForTheMoneyFirst() {
        double[] shares = {0.2, 0.5, 0.3};
        StagePlan plan = plan(List.of(StageOption.free("Barrel", 100), StageOption.free("Tote", 100),
                StageOption.free("Cistern", 400)), built -> built.stream().mapToDouble(i -> shares[i]).sum());
        assertEquals(List.of(new StagePlan.Step(1, 100, 0.5), new StagePlan.Step(0, 200, 0.7),
                new StagePlan.Step(2, 600, 1)), plan.order());
        assertEquals(Set.of(1), plan.bestFor(150).options());
        assertEquals(Set.of(), plan.bestFor(99).options());
        assertEquals(0, plan.reliabilityAtStart());
        assertEquals(List.of(0.0, 100.0, 200.0, 500.0, 600.0),
                plan.frontier().stream().map(StagePlan.Bought::costCur).toList());
    }

    @Test
    void whatIsNeededComesFirst() {
        StagePlan plan = plan(List.of(new StageOption("Treatment", 10, Set.of(1)), StageOption.free("Pump", 1000)),
                built -> built.contains(0) ? 1 : 0);
        assertEquals(List.of(1, 0), plan.order().stream().map(StagePlan.Step::option).toList());
        assertEquals(Set.of(), plan.bestFor(10).options());
    }

    @Test
    void nothingToBuildAndStagesThatChangeNothing() {
        assertEquals(List.of(), plan(List.of(), built -> 0.4).order());
        assertEquals(0.4, plan(List.of(), built -> 0.4).bestFor(0).reliability());
        StagePlan empty = plan(List.of(StageOption.free("Empty", 0), StageOption.free("Idle", 50)), built -> 0.4);
        assertEquals(2, empty.order().size());
        assertEquals(Set.of(), empty.bestFor(1e6).options());
    }

    @Test
    void refusals() {
        StageOption one = StageOption.free("A", 1);
        assertThrows(IllegalArgumentException.class, () -> StageOption.free("A", -1));
        assertThrows(IllegalArgumentException.class, () -> StageOption.free("A", Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> plan(Collections.nCopies(13, one), built -> 0));
        assertThrows(IllegalArgumentException.class, () -> plan(List.of(one), built -> 1.1));
        assertThrows(IllegalArgumentException.class, () -> plan(List.of(one), built -> Double.NaN));
        assertThrows(IllegalArgumentException.class,
                () -> plan(List.of(new StageOption("A", 1, Set.of(5))), built -> 0));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> plan(List.of(
                new StageOption("A", 1, Set.of(1)), new StageOption("B", 1, Set.of(0))), built -> 0)).getMessage()
                .contains("circle"));
        assertThrows(IllegalArgumentException.class, () -> plan(List.of(one), built -> 0).bestFor(-1));
        assertThrows(CancellationException.class, () -> StagePlan.of(List.of(one), built -> 0, () -> true));
    }

    /** Every order tried in turn, with reliabilities that follow no rule. */
    @Property(tries = 60)
    void noOrderIsBetter(@ForAll @IntRange(min = 0, max = 6) int count, @ForAll long seed) {
        Random random = new Random(seed);
        double[] known = IntStream.range(0, 1 << count).mapToDouble(i -> random.nextDouble()).toArray();
        List<StageOption> options = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            options.add(new StageOption("O" + i, random.nextInt(5) * 25,
                    i > 0 && random.nextInt(3) == 0 ? Set.of(random.nextInt(i)) : Set.of()));
        }
        StagePlan plan = plan(options, built -> known[mask(built)]);
        double best = bestArea(options, known, new TreeSet<>());
        double area = 0;
        SortedSet<Integer> built = new TreeSet<>();
        for (StagePlan.Step step : plan.order()) {
            assertTrue(built.containsAll(options.get(step.option()).after()));
            area += known[mask(built)] * options.get(step.option()).costCur();
            built.add(step.option());
        }
        assertEquals(best, area, 1e-9);
        double most = 0;
        for (StagePlan.Bought bought : plan.frontier()) {
            assertTrue(bought.reliability() >= most);
            most = bought.reliability();
            assertEquals(bought.reliability(), plan.bestFor(bought.costCur()).reliability());
        }
    }

    private static int mask(SortedSet<Integer> built) {
        return built.stream().mapToInt(i -> 1 << i).sum();
    }

    private static double bestArea(List<StageOption> options, double[] known, SortedSet<Integer> built) {
        if (built.size() == options.size()) {
            return 0;
        }
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < options.size(); i++) {
            if (!built.contains(i) && built.containsAll(options.get(i).after())) {
                SortedSet<Integer> more = new TreeSet<>(built);
                more.add(i);
                best = Math.max(best, known[mask(built)] * options.get(i).costCur() + bestArea(options, known, more));
            }
        }
        return best;
    }
}

package org.roofspring.hydraulics.pump;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;

import org.junit.jupiter.api.Test;
import org.roofspring.hydraulics.AgeingRun;
import org.roofspring.hydraulics.Band;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.PipeRun;

class WorkingRangeBatchTest {
    private static final PumpedLine LINE = new PumpedLine(2,
            List.of(new AgeingRun(new PipeRun(0.04, 6, 7e-6, 3), 1e-4)), HeadLoss.none(), flow -> 3e5 * flow * flow,
            List.of(new AgeingRun(new PipeRun(0.036, 60, 1.5e-4, 8), 9e-4)));
    private static final List<SystemState> STATES = new StateRange(new Band(-1, 1.5), new Band(12, 22), new Band(5, 30),
            Band.at(86_000), true).corners();

    private static List<PumpSet> candidates(int count) {
        Random random = new Random(3);
        List<PumpSet> candidates = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double shutOffM = 14 + 20 * random.nextDouble();
            double last = (0.8 + 2 * random.nextDouble()) * 1e-3;
            candidates.add(PumpSet.single(Pumps.sampled(4 + random.nextInt(6), last,
                    flow -> shutOffM * (1 - 0.1 * flow / last - 0.85 * Math.pow(flow / last, 2)))));
        }
        return candidates;
    }

    /**
     * Independent: plain bisection over the whole curve; these pumps fall all along, so there is one crossing at most.
     */
    @Test
    void agreesWithPlainBisection() {
        List<PumpSet> candidates = candidates(60);
        List<WorkingRange> ranges = WorkingRange.ofAll(candidates, LINE, STATES, () -> false);
        int met = 0;
        int dry = 0;
        for (int c = 0; c < candidates.size(); c++) {
            for (int s = 0; s < STATES.size(); s++) {
                SystemCurve system = LINE.at(STATES.get(s));
                PumpSet pumps = candidates.get(c);
                DutyOutcome outcome = ranges.get(c).duties().get(s).outcome();
                if (pumps.headM(0) <= system.headM(0)) {
                    assertEquals(DutyOutcome.StaticHeadAboveShutOff.class, outcome.getClass());
                    dry++;
                    continue;
                }
                double low = 0;
                double high = pumps.highestFlowM3PerS();
                if (pumps.headM(high) > system.headM(high)) {
                    assertEquals(DutyOutcome.RunsOut.class, outcome.getClass());
                    continue;
                }
                for (int k = 0; k < 60; k++) {
                    double middle = (low + high) / 2;
                    if (pumps.headM(middle) > system.headM(middle)) {
                        low = middle;
                    } else {
                        high = middle;
                    }
                }
                assertEquals(low, outcome.working().orElseThrow().flowM3PerS(), 1e-15);
                met++;
            }
        }
        assertTrue(met > 500 && dry > 50, met + " met, " + dry + " dry");
    }

    @Test
    void batchIsTheSameAsOneByOne() {
        List<PumpSet> candidates = candidates(5);
        List<WorkingRange> ranges = WorkingRange.ofAll(candidates, LINE, STATES, () -> false);
        for (int c = 0; c < 5; c++) {
            assertEquals(WorkingRange.of(candidates.get(c), LINE, STATES), ranges.get(c));
        }
    }

    @Test
    void stopsWhenCancelled() {
        AtomicInteger polls = new AtomicInteger();
        assertThrows(CancellationException.class,
                () -> WorkingRange.ofAll(candidates(5), LINE, STATES, () -> polls.incrementAndGet() > 2));
        assertEquals(3, polls.get());
    }
}

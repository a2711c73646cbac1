package org.roofspring.drainage.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.roofspring.drainage.intensity.IntensityRelation;
import org.roofspring.drainage.siting.PollutionSource.Kind;
import org.roofspring.drainage.siting.PollutionSource.Verdict;

class SitingTest {

    @Example
    void pollutionVerdicts() {
        assertEquals(Verdict.CLEAR, new PollutionSource(Kind.LATRINE, 30, -1).verdict(30));
        assertEquals(Verdict.CLEAR, new PollutionSource(Kind.LATRINE, 30, 0).verdict(30));
        assertEquals(Verdict.UPHILL, new PollutionSource(Kind.REFUSE, 40, 2).verdict(30));
        assertEquals(Verdict.TOO_NEAR, new PollutionSource(Kind.LATRINE, 29.9, -1).verdict(30));
        assertEquals(Verdict.TOO_NEAR_AND_UPHILL, new PollutionSource(Kind.SOAK_PIT, 5, 0.1).verdict(30));
        assertEquals(0.05, new PollutionSource(Kind.REFUSE, 40, 2).slopeRatio(), 1e-12);
        assertEquals(0, new PollutionSource(Kind.REFUSE, 0, 0).slopeRatio());
    }

    /** By hand: 5 m3 in a 100 kg tank on a 400 kg slab of 4 m2. */
    @Example
    void bearingByHand() {
        TankLoad load = new TankLoad(5, 100, 400, 4);
        assertEquals(5491, load.massKg(), 1e-9);
        assertEquals(5491 * 9.80665 / 4, load.pressurePa(), 1e-9);
        assertEquals(load.pressurePa() / 75e3, load.bearingUtilisation(75e3), 1e-12);
        for (GroundKind kind : GroundKind.table()) {
            assertTrue(kind.leastPa() <= kind.greatestPa());
            assertTrue(kind.source().needsVerifying());
        }
    }

    /** An anchor of the missing mass, with what it displaces, brings the tank to exactly the margin asked for. */
    @Property(tries = 100)
    void missingAnchorReachesTheMargin(@ForAll @Scale(3) @DoubleRange(min = 0.5, max = 50) double displaced,
            @ForAll @Scale(3) @DoubleRange(min = 10, max = 500) double empty,
            @ForAll @Scale(3) @DoubleRange(min = 1, max = 2) double safety) {
        Flotation bare = new Flotation(displaced, empty, 0, 0);
        double anchor = bare.missingAnchorKg(safety, 2400);
        if (anchor == 0) {
            assertTrue(bare.staysDown(safety));
            return;
        }
        assertFalse(bare.staysDown(safety));
        Flotation held = new Flotation(displaced + anchor / 2400, empty, anchor, 0);
        assertEquals(safety * held.upliftN(), held.holdDownN(), 1e-9 * held.holdDownN());
        assertEquals(0, new Flotation(displaced + anchor / 2400, empty, anchor * 1.0001, 0)
                .missingAnchorKg(safety, 2400), 1);
    }

    @Example
    void dryGroundLiftsNothing() {
        assertTrue(new Flotation(0, 0, 0, 0).staysDown(2));
        assertEquals(0, new Flotation(0, 0, 0, 0).missingAnchorKg(1.2, 2400));
    }

    /** The worst storm against every minute of a day, one by one, with the pit emptied step by step. */
    @Property(tries = 10)
    void soakawayAgreesWithEveryMinute(@ForAll @Scale(0) @DoubleRange(min = 20, max = 200) double areaM2,
            @ForAll @Scale(6) @DoubleRange(min = 0.000005, max = 0.0005) double infiltration) {
        Soakaway pit = new Soakaway(1.5, 1, 1.2, 0.3, infiltration);
        IntensityRelation storm = new IntensityRelation.Sherman(1200, 12, 0.8);
        List<Double> minutes = java.util.stream.IntStream.rangeClosed(1, 1440).mapToObj(m -> m * 60.0).toList();
        Soakaway.Check check = pit.check(areaM2, storm, 0, minutes);
        double worst = 0;
        for (int m = 1; m <= 1440; m++) {
            double in = areaM2 * storm.depthMm(m * 60.0) / 1000 / m;
            double stored = 0;
            for (int step = 0; step < m; step++) {
                stored = Math.max(0, stored + in - 2.5 * 1.2 * infiltration * 60);
            }
            worst = Math.max(worst, stored);
        }
        assertEquals(worst, check.neededM3(), 1e-9 + 1e-9 * worst);
        assertEquals(1.5 * 1.2 * 0.3, check.roomM3(), 1e-12);
        assertEquals(check.neededM3() <= check.roomM3() && check.halfEmptyS() <= 86400, check.suffices());
        Soakaway.Check coarse = pit.check(areaM2, storm, 0, Soakaway.DURATIONS_S);
        assertTrue(coarse.neededM3() <= check.neededM3() * (1 + 1e-9) || coarse.durationS() > 86400);
    }

    @Example
    void soakawayTakesTapDrainsAndRefusesNoDurations() {
        Soakaway pit = new Soakaway(1, 1, 1, 0.3, 1e-6);
        IntensityRelation storm = new IntensityRelation.Talbot(3000, 20);
        double without = pit.check(50, storm, 0, Soakaway.DURATIONS_S).neededM3();
        assertTrue(pit.check(50, storm, 1e-5, Soakaway.DURATIONS_S).neededM3() > without);
        assertThrows(IllegalArgumentException.class, () -> pit.check(50, storm, 0, List.of()));
        // a trial pit that loses 0.15 m3 through 1.5 m2 in 1000 s
        assertEquals(1e-4, Soakaway.infiltrationMPerS(0.15, 1.5, 1000), 1e-15);
    }

    @Example
    void everyCautionSaysWhatWhoAndWhence() {
        Set<String> codes = new HashSet<>();
        for (RoofCaution caution : RoofCaution.values()) {
            assertTrue(codes.add(caution.code()), caution.code());
            assertTrue(caution.text().endsWith("."), caution.code());
            assertFalse(caution.source().text().isBlank(), caution.code());
            if (caution.severity() == RoofCaution.Severity.DANGER) {
                assertTrue(caution.askWhom().endsWith("."), caution.code());
            }
        }
        String mesh = RoofCaution.MOSQUITO_MESH.text();
        assertTrue(mesh.contains("1 mm"), mesh);
        assertTrue(RoofCaution.TANK_WEIGHT.text().contains("998 kg (9.79 kN)"));
        String space = RoofCaution.CONFINED_SPACE.text();
        assertTrue(space.contains("19.5 to 23.5 %") && space.contains("attendant"), space);
        assertTrue(RoofCaution.LADDER_WORK.source().text().startsWith("from memory, verify against"));
    }
}

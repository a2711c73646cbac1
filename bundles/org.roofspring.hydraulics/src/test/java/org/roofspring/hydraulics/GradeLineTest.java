package org.roofspring.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

class GradeLineTest {
    private static final WaterProperties WATER = WaterProperties.at(20);
    private static final PipeRun WIDE = new PipeRun(0.04, 30, 7e-6, 2);
    private static final PipeRun NARROW = new PipeRun(0.025, 20, 7e-6, 4);
    private static final List<ProfilePoint> PROFILE = List.of(new ProfilePoint(0, 0), new ProfilePoint(10, 6),
            new ProfilePoint(40, 2), new ProfilePoint(50, 1));

    @Test
    void fallsByTheLossOfEachPipe() {
        double flow = 1e-3;
        double wideM = WIDE.lossAt(flow, WATER).totalLossM();
        double narrowM = NARROW.lossAt(flow, WATER).totalLossM();
        List<GradeLine.Point> points = GradeLine.along(PROFILE, List.of(WIDE, NARROW), 9, flow, WATER).points();
        assertEquals(List.of(0.0, 10.0, 30.0, 40.0, 50.0), points.stream().map(GradeLine.Point::distanceM).toList());
        double[] grades = {9, 9 - wideM / 3, 9 - wideM, 9 - wideM - narrowM / 2, 9 - wideM - narrowM};
        double[] elevations = {0, 6, 2 + 4 / 3.0, 2, 1};
        for (int i = 0; i < 5; i++) {
            assertEquals(grades[i], points.get(i).gradeM(), 1e-12);
            assertEquals(elevations[i], points.get(i).elevationM(), 1e-12);
        }
    }

    @Test
    void stretchesPipesToTheProfile() {
        List<ProfilePoint> twice = PROFILE.stream().map(p -> new ProfilePoint(7 + p.distanceM() * 2, p.elevationM()))
                .toList();
        List<GradeLine.Point> points = GradeLine.along(twice, List.of(WIDE, NARROW), 9, 1e-3, WATER).points();
        assertEquals(List.of(7.0, 27.0, 67.0, 87.0, 107.0), points.stream().map(GradeLine.Point::distanceM).toList());
    }

    @Test
    void namesWhereTheGradeIsBelowThePipe() {
        GradeLine line = GradeLine.along(PROFILE, List.of(WIDE, NARROW), 5, 1e-3, WATER);
        assertEquals(10, line.lowestPressure().distanceM());
        assertTrue(line.lowestPressure().pressureHeadM() < -1);
        assertEquals(10, line.belowPipe().get(0).distanceM());
        assertTrue(GradeLine.along(PROFILE, List.of(WIDE), 20, 0, WATER).belowPipe().isEmpty());
    }

    @Test
    void joinsAtAPointOfTheProfileOnce() {
        List<ProfilePoint> profile = List.of(new ProfilePoint(0, 0), new ProfilePoint(30, 1), new ProfilePoint(50, 0));
        assertEquals(List.of(0.0, 30.0, 50.0), GradeLine.along(profile, List.of(WIDE, NARROW), 5, 1e-3, WATER).points()
                .stream().map(GradeLine.Point::distanceM).toList());
    }

    @Test
    void refusesBadProfiles() {
        assertThrows(IllegalArgumentException.class,
                () -> GradeLine.along(PROFILE.subList(0, 1), List.of(WIDE), 5, 0, WATER));
        assertThrows(IllegalArgumentException.class,
                () -> GradeLine.along(PROFILE.reversed(), List.of(WIDE), 5, 0, WATER));
        assertThrows(IllegalArgumentException.class, () -> GradeLine.along(PROFILE, List.of(), 5, 0, WATER));
        assertThrows(IllegalArgumentException.class, () -> new ProfilePoint(Double.NaN, 0));
    }
}

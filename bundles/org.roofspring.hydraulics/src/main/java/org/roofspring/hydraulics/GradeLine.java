package org.roofspring.hydraulics;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.hydraulics.internal.Require;

/**
 * The hydraulic grade along a run: how high the water would stand in a tube on the pipe. Where it falls below the pipe
 * the pressure is under that of the air: air comes out of the water and collects there, joints draw in dirt, and the
 * flow may break. The velocity head, a few centimetres, is left out.
 *
 * @param points along the run, at every point of the profile and every change of bore
 */
public record GradeLine(List<Point> points) {

    /**
     * Pipe and grade at a distance.
     *
     * @param distanceM  from the start [m]
     * @param elevationM of the pipe [m]
     * @param gradeM     level of the grade line [m]
     */
    public record Point(double distanceM, double elevationM, double gradeM) {
        /** Head over the pipe [m]; negative where the grade is below it. */
        public double pressureHeadM() {
            return gradeM - elevationM;
        }
    }

    public GradeLine {
        points = Require.list("points of the grade line", points);
        Require.within("number of points of the grade line", points.size(), 2, 1_000_000);
    }

    /** Where the pressure is lowest; the first such point. */
    public Point lowestPressure() {
        return points.stream().reduce((a, b) -> b.pressureHeadM() < a.pressureHeadM() ? b : a).orElseThrow();
    }

    /** The points of the profile at which the grade is below the pipe; between points both are straight lines. */
    public List<Point> belowPipe() {
        return points.stream().filter(point -> point.pressureHeadM() < 0).toList();
    }

    /**
     * The grade line of pipes laid one after another along a profile. Fittings count as spread along their pipe. Where
     * the pipes and the profile differ in length, the pipes are stretched to the profile.
     *
     * @param profile     by rising distance, at least two points
     * @param pipes       in the order of flow, at least one of some length
     * @param startHeadM  level of the grade line where the first pipe begins, after any device ahead of it [m]
     * @param flowM3PerS  [m3/s], 0 to 1000
     */
    public static GradeLine along(List<ProfilePoint> profile, List<PipeRun> pipes, double startHeadM, double flowM3PerS,
            WaterProperties water) {
        requireProfile(profile);
        double pipeLengthM = Require.list("pipes", pipes).stream().mapToDouble(PipeRun::lengthM).sum();
        Require.within("length of all pipes", pipeLengthM, 1e-3, 1e9, "m");
        Require.within("level of the grade line at the start", startHeadM, -10_000, 100_000, "m");
        ProfilePoint begin = profile.get(0);
        double stretch = (profile.get(profile.size() - 1).distanceM() - begin.distanceM()) / pipeLengthM;
        List<Point> points = new ArrayList<>();
        double from = begin.distanceM();
        double headM = startHeadM;
        int next = 0;
        for (PipeRun pipe : pipes) {
            double to = from + pipe.lengthM() * stretch;
            double lossM = pipe.lossAt(flowM3PerS, water).totalLossM();
            while (next < profile.size() && profile.get(next).distanceM() < to) {
                double share = (profile.get(next).distanceM() - from) / (to - from);
                points.add(new Point(profile.get(next).distanceM(), profile.get(next).elevationM(),
                        headM - share * lossM));
                next++;
            }
            headM -= lossM;
            from = to;
            if (next < profile.size() - 1 && profile.get(next).distanceM() > to) {
                points.add(new Point(to, elevationM(profile, to), headM));
            }
        }
        ProfilePoint end = profile.get(profile.size() - 1);
        points.removeIf(point -> point.distanceM() >= end.distanceM());
        points.add(new Point(end.distanceM(), end.elevationM(), headM));
        return new GradeLine(points);
    }

    private static double elevationM(List<ProfilePoint> profile, double distanceM) {
        int i = 0;
        while (i < profile.size() - 2 && distanceM >= profile.get(i + 1).distanceM()) {
            i++;
        }
        ProfilePoint a = profile.get(i);
        ProfilePoint b = profile.get(i + 1);
        return a.elevationM() + (b.elevationM() - a.elevationM()) * (distanceM - a.distanceM())
                / (b.distanceM() - a.distanceM());
    }

    private static void requireProfile(List<ProfilePoint> profile) {
        Require.within("number of points of the profile", Require.list("profile", profile).size(), 2, 1_000_000);
        for (int i = 1; i < profile.size(); i++) {
            if (!(profile.get(i).distanceM() > profile.get(i - 1).distanceM())) {
                throw new IllegalArgumentException("points of the profile must be in order of rising distance, but"
                        + " point " + (i + 1) + " at " + Require.show(profile.get(i).distanceM(), "m") + " follows "
                        + Require.show(profile.get(i - 1).distanceM(), "m"));
            }
        }
    }
}

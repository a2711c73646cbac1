package org.roofspring.storage.outlook;

import java.util.List;

/**
 * Height of water against volume, by straight lines between measured points.
 *
 * @param points two or more, both numbers rising
 */
public record TankGauge(List<Point> points) {

    /**
     * A point of the curve.
     *
     * @param heightM water above the floor [m], 0 or more
     * @param volumeM3 in the tank [m&sup3;], 0 or more
     */
    public record Point(double heightM, double volumeM3) {

        /** Checks the numbers. */
        public Point {
            if (!(heightM >= 0 && heightM < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("heightM is " + heightM + " m; accepted is 0 or more");
            }
            if (!(volumeM3 >= 0 && volumeM3 < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("volumeM3 is " + volumeM3 + " m3; accepted is 0 or more");
            }
        }
    }

    /** Copies the list and checks that it rises. */
    public TankGauge {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("points has " + points.size() + " points; accepted is two or more");
        }
        for (int i = 1; i < points.size(); i++) {
            Point before = points.get(i - 1);
            Point point = points.get(i);
            if (!(point.heightM() > before.heightM() && point.volumeM3() > before.volumeM3())) {
                throw new IllegalArgumentException("points does not rise at " + point.heightM() + " m, "
                        + point.volumeM3() + " m3; accepted are heights and volumes that rise");
            }
        }
    }

    /**
     * A tank with upright walls.
     *
     * @param heightM water when full [m]
     * @param capacityM3 volume then [m&sup3;]
     */
    public static TankGauge upright(double heightM, double capacityM3) {
        return new TankGauge(List.of(new Point(0, 0), new Point(heightM, capacityM3)));
    }

    /** Volume at a height [m&sup3;]; below and above the points, that of the first and last. */
    public double volumeM3(double heightM) {
        if (!(heightM >= 0)) {
            throw new IllegalArgumentException("heightM is " + heightM + " m; accepted is 0 or more");
        }
        Point below = points.getFirst();
        for (Point point : points) {
            if (heightM <= point.heightM()) {
                return heightM <= below.heightM() ? below.volumeM3() : between(heightM, below.heightM(),
                        point.heightM(), below.volumeM3(), point.volumeM3());
            }
            below = point;
        }
        return below.volumeM3();
    }

    /** Height at a volume [m]; below and above the points, that of the first and last. */
    public double heightM(double volumeM3) {
        if (!(volumeM3 >= 0)) {
            throw new IllegalArgumentException("volumeM3 is " + volumeM3 + " m3; accepted is 0 or more");
        }
        Point below = points.getFirst();
        for (Point point : points) {
            if (volumeM3 <= point.volumeM3()) {
                return volumeM3 <= below.volumeM3() ? below.heightM() : between(volumeM3, below.volumeM3(),
                        point.volumeM3(), below.heightM(), point.heightM());
            }
            below = point;
        }
        return below.heightM();
    }

    private static double between(double at, double from, double to, double valueFrom, double valueTo) {
        return valueFrom + (valueTo - valueFrom) * ((at - from) / (to - from));
    }
}

package org.roofspring.drainage;

/**
 * Gutter flow computed twice over without the product's code: by fine Runge-Kutta steps of the equation of the depth
 * (slow flow only), and by letting unsteady flow settle in time (any flow, jumps too, but first order in space).
 * Sections are half-round or rectangular; depths in m, flows in m3/s.
 */
final class SlowGutter {
    private static final double G = 9.80665;

    private final boolean round;
    private final double width;
    private final double length;
    private final double slope;
    private final double n;

    SlowGutter(boolean round, double width, double length, double slope, double n) {
        this.round = round;
        this.width = width;
        this.length = length;
        this.slope = slope;
        this.n = n;
    }

    /** The same gutter for the product, with the given depth. */
    Gutter gutter(double depthM) {
        return new Gutter(round ? new HalfRoundSection(width, depthM) : new RectangularSection(width, depthM), length,
                slope, n);
    }

    private double theta(double y) {
        return 2 * Math.acos(1 - Math.min(y, width / 2) / (width / 2));
    }

    private double wall(double y) {
        return Math.max(0, y - width / 2);
    }

    double area(double y) {
        return round ? width * width / 8 * (theta(y) - Math.sin(theta(y))) + width * wall(y) : width * y;
    }

    double top(double y) {
        return round ? width * Math.sin(theta(y) / 2) : width;
    }

    private double perimeter(double y) {
        return round ? width / 2 * theta(y) + 2 * wall(y) : width + 2 * y;
    }

    /** First moment about the surface, by Simpson's rule over the areas below. */
    double moment(double y) {
        if (!round) {
            return width * y * y / 2;
        }
        int strips = 20;
        double sum = 0;
        for (int i = 0; i <= strips; i++) {
            // cubed spacing, since the area grows with the power 1.5 of the depth
            double s = i / (double) strips;
            double weight = i == 0 || i == strips ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * area(y * s * s) * 2 * s;
        }
        return y * sum / (3 * strips);
    }

    private double friction(double y, double q) {
        return Math.pow(n * q / area(y), 2) / Math.pow(area(y) / perimeter(y), 4.0 / 3);
    }

    double critical(double q) {
        double low = 0;
        double high = 10;
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (q * q * top(middle) > G * Math.pow(area(middle), 3)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private double numerator(double x, double y, double total) {
        double q = total * x / length;
        return slope - friction(y, q) - 2 * q * total / length / (G * area(y) * area(y));
    }

    private double denominator(double x, double y, double total) {
        double q = total * x / length;
        return 1 - q * q * top(y) / (G * Math.pow(area(y), 3));
    }

    /** Depths of slow flow with a free outfall at evenly spaced places from the closed end, Runge-Kutta of order 4. */
    double[] slowFlow(double total, int places) {
        // from the outfall, where the surface stands upright, step in the depth; then in the distance
        double x = length;
        double y = critical(total);
        double rise = y * 1e-5;
        while (denominator(x, y, total) < 0.5) {
            double k1 = denominator(x, y, total) / numerator(x, y, total);
            double k2 = slopeInDepth(x + rise / 2 * k1, y + rise / 2, total);
            double k3 = slopeInDepth(x + rise / 2 * k2, y + rise / 2, total);
            double k4 = slopeInDepth(x + rise * k3, y + rise, total);
            x += rise / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
            y += rise;
        }
        double[] depths = new double[places + 1];
        int steps = 400;
        for (int place = places; place >= 0; place--) {
            double goal = length * place / places;
            if (goal > x) {
                depths[place] = Double.NaN;
                continue;
            }
            double h = (goal - x) / steps;
            for (int i = 0; i < steps; i++) {
                double k1 = slopeInDistance(x, y, total);
                double k2 = slopeInDistance(x + h / 2, y + h / 2 * k1, total);
                double k3 = slopeInDistance(x + h / 2, y + h / 2 * k2, total);
                double k4 = slopeInDistance(x + h, y + h * k3, total);
                y += h / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
                x += h;
            }
            x = goal;
            depths[place] = y;
        }
        return depths;
    }

    private double slopeInDepth(double x, double y, double total) {
        return denominator(x, y, total) / numerator(x, y, total);
    }

    private double slopeInDistance(double x, double y, double total) {
        return numerator(x, y, total) / denominator(x, y, total);
    }

    /** Depths in the middle of evenly spaced cells once unsteady flow, begun half full, has settled. */
    double[] settled(double total, double outletDepth, int cells, double seconds) {
        double dx = length / cells;
        double[] areas = new double[cells];
        double[] flows = new double[cells];
        double[] depths = new double[cells];
        java.util.Arrays.fill(depths, width / 4);
        java.util.Arrays.fill(areas, area(width / 4));
        double time = 0;
        double[] mass = new double[cells + 1];
        double[] force = new double[cells + 1];
        while (time < seconds) {
            double fastest = 0;
            double[] speed = new double[cells];
            double[] pressure = new double[cells];
            for (int i = 0; i < cells; i++) {
                speed[i] = Math.abs(flows[i] / areas[i]) + Math.sqrt(G * areas[i] / top(depths[i]));
                pressure[i] = flows[i] * flows[i] / areas[i] + G * moment(depths[i]);
                fastest = Math.max(fastest, speed[i]);
            }
            double dt = 0.45 * dx / fastest;
            mass[0] = 0;
            force[0] = G * moment(depths[0]);
            for (int i = 1; i < cells; i++) {
                double s = Math.max(speed[i - 1], speed[i]);
                mass[i] = (flows[i - 1] + flows[i]) / 2 - s / 2 * (areas[i] - areas[i - 1]);
                force[i] = (pressure[i - 1] + pressure[i]) / 2 - s / 2 * (flows[i] - flows[i - 1]);
            }
            int last = cells - 1;
            double edge = Math.max(Math.min(depths[last], Math.max(1e-6, critical(flows[last]))), outletDepth);
            double q = flows[last];
            boolean fast = q * q * top(depths[last]) > G * Math.pow(areas[last], 3)
                    && pressure[last] > q * q / area(edge) + G * moment(edge);
            mass[cells] = q;
            force[cells] = fast ? pressure[last] : q * q / area(edge) + G * moment(edge);
            for (int i = 0; i < cells; i++) {
                areas[i] += dt * ((mass[i] - mass[i + 1]) / dx + total / length);
                double pushed = flows[i] + dt * ((force[i] - force[i + 1]) / dx + G * areas[i] * slope);
                double drag = G * friction(depths[i], 1) * areas[i] * Math.abs(flows[i]);
                flows[i] = pushed / (1 + dt * drag);
                depths[i] = depth(areas[i], depths[i]);
            }
            time += dt;
        }
        return depths;
    }

    private double depth(double area, double guess) {
        if (!round) {
            return area / width;
        }
        double y = guess;
        for (int i = 0; i < 8; i++) {
            y *= Math.pow(area / area(y), 0.7);
        }
        return y;
    }
}

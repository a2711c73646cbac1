package org.roofspring.hydraulics.internal;

/**
 * A smooth curve through points that never leaves the range of the two neighbours it is between.
 *
 * <p>Piecewise cubic Hermite interpolation. The slope at a point is that of the parabola through it and its neighbours,
 * held within zero and three times the flatter of the two adjoining chords, and zero at a peak or trough of the data.
 * With slopes so held each piece is monotone (Fritsch and Carlson, SIAM J. Numer. Anal. 17, 1980; de Boor and Swartz,
 * J. Approx. Theory 21, 1977), so the curve has no wiggle that the data have not. Data that lie on a parabola which
 * rises or falls all along, the usual shape of a pump curve, are met exactly between the points too.
 */
public final class MonotoneCubic {
    private final double[] x;
    private final double[] y;
    private final double[] slope;

    /**
     * @param x strictly rising, at least two
     * @param y as many finite values
     */
    public MonotoneCubic(double[] x, double[] y) {
        if (x.length < 2 || x.length != y.length) {
            throw new IllegalArgumentException("a curve must have at least 2 points, as many x as y, not " + x.length
                    + " x and " + y.length + " y");
        }
        for (int i = 1; i < x.length; i++) {
            if (!(x[i] > x[i - 1])) {
                throw new IllegalArgumentException("points must be in rising order, not " + x[i] + " after "
                        + x[i - 1]);
            }
        }
        this.x = x.clone();
        this.y = y.clone();
        this.slope = slopes(this.x, this.y);
    }

    private static double[] slopes(double[] x, double[] y) {
        int last = x.length - 1;
        double[] chord = new double[last];
        for (int i = 0; i < last; i++) {
            chord[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
        double[] slope = new double[last + 1];
        if (last == 1) {
            slope[0] = chord[0];
            slope[1] = chord[0];
            return slope;
        }
        for (int i = 1; i < last; i++) {
            double left = x[i] - x[i - 1];
            double right = x[i + 1] - x[i];
            double parabola = (right * chord[i - 1] + left * chord[i]) / (left + right);
            slope[i] = held(parabola, chord[i - 1], chord[i]);
        }
        slope[0] = endSlope(x[1] - x[0], x[2] - x[1], chord[0], chord[1]);
        slope[last] = endSlope(x[last] - x[last - 1], x[last - 1] - x[last - 2], chord[last - 1], chord[last - 2]);
        return slope;
    }

    private static double endSlope(double near, double next, double nearChord, double nextChord) {
        double parabola = nearChord + near * (nearChord - nextChord) / (near + next);
        return held(parabola, nearChord, nearChord);
    }

    /** Keeps a slope between zero and three times the flatter chord, zero where the chords differ in sign. */
    private static double held(double wanted, double chord, double otherChord) {
        if (!(chord * otherChord > 0) || !(wanted * chord > 0)) {
            return 0;
        }
        double steepest = 3 * Math.min(Math.abs(chord), Math.abs(otherChord));
        return Math.copySign(Math.min(Math.abs(wanted), steepest), chord);
    }

    /** Number of points. */
    public int size() {
        return x.length;
    }

    /** Abscissa of a point. */
    public double x(int point) {
        return x[point];
    }

    /** Ordinate of a point. */
    public double y(int point) {
        return y[point];
    }

    /** First abscissa. */
    public double low() {
        return x[0];
    }

    /** Last abscissa. */
    public double high() {
        return x[x.length - 1];
    }

    /** Whether the curve is defined there. */
    public boolean covers(double at) {
        return at >= low() && at <= high();
    }

    /** Index of the largest ordinate; the first one if several are equal. */
    public int peak() {
        int best = 0;
        for (int i = 1; i < y.length; i++) {
            best = y[i] > y[best] ? i : best;
        }
        return best;
    }

    /**
     * The value of the curve.
     *
     * @param at from {@link #low} to {@link #high}
     */
    public double value(double at) {
        if (!covers(at)) {
            throw new IllegalArgumentException("the curve is known from " + low() + " to " + high() + ", not at " + at);
        }
        int i = 0;
        while (i < x.length - 2 && at >= x[i + 1]) {
            i++;
        }
        double width = x[i + 1] - x[i];
        double t = (at - x[i]) / width;
        double r = 1 - t;
        return y[i] * (1 + 2 * t) * r * r + slope[i] * width * t * r * r + y[i + 1] * t * t * (3 - 2 * t)
                - slope[i + 1] * width * t * t * r;
    }
}

package org.roofspring.ui.parts.storage;

import org.eclipse.swt.graphics.RGB;

/**
 * Colours for a share from none to all. Each ramp only grows darker from its begin to its end, so that it reads the
 * same to every kind of colour sight, and in grey.
 */
public enum Ramp {
    /** From a little missing, pale amber, to all missing, nearly black. */
    SHORTAGE(0xf8dd8a, 0xf0a04b, 0xc9502f, 0x7d1f43, 0x2b0f33),
    /** From hardly any day met, pale, to every day met, deep blue. */
    RELIABILITY(0xf3efdf, 0xbfd9d2, 0x6bb0bd, 0x2c76a0, 0x0d2f5c);

    private final int[] stops;

    Ramp(int... stops) {
        this.stops = stops;
    }

    /** @param share 0 to 1; beyond that, the colour of the end */
    public RGB at(double share) {
        double place = Math.clamp(share, 0, 1) * (stops.length - 1);
        int below = Math.min(stops.length - 2, (int) place);
        double part = place - below;
        return new RGB(mix(below, part, 16), mix(below, part, 8), mix(below, part, 0));
    }

    private int mix(int below, double part, int shift) {
        int from = stops[below] >> shift & 0xff;
        int to = stops[below + 1] >> shift & 0xff;
        return (int) Math.round(from + (to - from) * part);
    }

    /** How light a colour is to the eye, 0 for black to 1 for white (relative luminance of sRGB, IEC 61966-2-1). */
    public static double luminance(RGB rgb) {
        return 0.2126 * linear(rgb.red) + 0.7152 * linear(rgb.green) + 0.0722 * linear(rgb.blue);
    }

    private static double linear(int channel) {
        double value = channel / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}

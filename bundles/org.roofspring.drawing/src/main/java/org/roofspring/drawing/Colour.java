package org.roofspring.drawing;

/**
 * An opaque colour.
 *
 * @param red   0 to 255
 * @param green 0 to 255
 * @param blue  0 to 255
 */
public record Colour(int red, int green, int blue) {
    public static final Colour BLACK = new Colour(0, 0, 0);
    public static final Colour WHITE = new Colour(255, 255, 255);

    public Colour {
        if (red < 0 || red > 255 || green < 0 || green > 255 || blue < 0 || blue > 255) {
            throw new IllegalArgumentException("a colour has parts from 0 to 255, not " + red + ", " + green + ", "
                    + blue);
        }
    }

    /** From a number such as {@code 0x1b5e9b}. */
    public static Colour of(int rgb) {
        return new Colour(rgb >> 16 & 0xff, rgb >> 8 & 0xff, rgb & 0xff);
    }

    /** A colour between this one and another; {@code share} 0 gives this, 1 the other. */
    public Colour towards(Colour other, double share) {
        double part = Math.min(1, Math.max(0, share));
        return new Colour(between(red, other.red, part), between(green, other.green, part), between(blue, other.blue,
                part));
    }

    private static int between(int from, int to, double share) {
        return (int) Math.round(from + (to - from) * share);
    }

    /** As in SVG and CSS, such as {@code #1b5e9b}. */
    public String hex() {
        return "#%06x".formatted(red << 16 | green << 8 | blue);
    }
}

package org.roofspring.drawing;

import java.util.List;

/**
 * The colours of drawings. Series follow each other from dark to light as well as in hue, so that neighbours can be
 * told
 * apart with any kind of colour vision and on a grey print; a chart never relies on colour alone.
 */
public final class Colours {
    public static final Colour INK = Colour.of(0x1f2933);
    public static final Colour FAINT_INK = Colour.of(0x5b6770);
    public static final Colour GRID = Colour.of(0xdde2e6);
    public static final Colour WATER = Colour.of(0x1b5e9b);
    public static final Colour PALE_WATER = Colour.of(0xcfe2f3);
    public static final Colour SHORTAGE = Colour.of(0x8f2d0e);

    private static final List<Colour> SERIES = List.of(WATER, Colour.of(0xd0740f), Colour.of(0x0d3b2e),
            Colour.of(0x8d6bb8),
            Colour.of(0x4fa58a), Colour.of(0x7a1f3d), Colour.of(0xb8a12e), Colour.of(0x62707a));

    private Colours() {
    }

    /** Colour of the n-th series, from 0; they repeat after eight. */
    public static Colour series(int index) {
        return SERIES.get(Math.floorMod(index, SERIES.size()));
    }
}

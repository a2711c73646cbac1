package org.roofspring.calc.standard.drainage;

import org.roofspring.calc.standard.water.Given;
import org.roofspring.drainage.GutterSection;
import org.roofspring.drainage.HalfRoundSection;
import org.roofspring.drainage.RectangularSection;
import org.roofspring.drainage.TrapezoidalSection;
import org.roofspring.site.Gutter;
import org.roofspring.site.SitePackage;

/** The cross-section of a gutter of the site, up to its freeboard: what is kept free against splash carries nothing. */
final class GutterShape {
    private static final String MISSING_PROFILE = "the shape of its cross-section is not stated";

    private GutterShape() {
    }

    /**
     * @param factor by which every dimension but the freeboard is larger
     * @throws IllegalArgumentException when something is missing or cannot be, in words that follow "name: "
     */
    static GutterSection of(Gutter gutter, double factor) {
        if (gutter.getWidth() == null) {
            throw new IllegalArgumentException("its width is missing");
        }
        double width = gutter.getWidth().si() * factor;
        double freeboard = gutter.getFreeboard() == null ? 0 : gutter.getFreeboard().si();
        return switch (gutter.getProfile()) {
            case UNSTATED -> throw new IllegalArgumentException(MISSING_PROFILE);
            case HALF_ROUND -> {
                double full = gutter.getDepth() == null ? width / 2 : gutter.getDepth().si() * factor;
                double depth = below(full, freeboard);
                yield new HalfRoundSection(new HalfRoundSection(width, full).surfaceWidthM(depth), depth);
            }
            case RECTANGULAR -> new RectangularSection(width, below(depth(gutter, factor), freeboard));
            case TRAPEZOIDAL -> {
                if (gutter.getSoleWidth() == null) {
                    throw new IllegalArgumentException("the width of its sole is missing");
                }
                yield trapezium(width, gutter.getSoleWidth().si() * factor, depth(gutter, factor), freeboard);
            }
            case TRIANGULAR -> trapezium(width, 0, depth(gutter, factor), freeboard);
        };
    }

    private static GutterSection trapezium(double width, double sole, double full, double freeboard) {
        double depth = below(full, freeboard);
        return new TrapezoidalSection(new TrapezoidalSection(width, sole, full).surfaceWidthM(depth), sole, depth);
    }

    private static double depth(Gutter gutter, double factor) {
        if (gutter.getDepth() == null) {
            throw new IllegalArgumentException("its depth is missing");
        }
        return gutter.getDepth().si() * factor;
    }

    private static double below(double full, double freeboard) {
        if (freeboard >= full) {
            throw new IllegalArgumentException("its freeboard takes up the whole depth of " + full * 1000 + " mm");
        }
        return full - freeboard;
    }

    /** The gutter of that section and length as the kernel sees it, with the site's slope and roughness. */
    static org.roofspring.drainage.Gutter stretch(Gutter gutter, double lengthM, double factor) {
        return new org.roofspring.drainage.Gutter(of(gutter, factor), Math.max(lengthM, 0.1),
                Given.si(gutter, SitePackage.Literals.GUTTER__SLOPE, 0),
                Given.si(gutter, SitePackage.Literals.GUTTER__ROUGHNESS,
                        org.roofspring.drainage.Gutter.DEFAULT_MANNING_N));
    }
}

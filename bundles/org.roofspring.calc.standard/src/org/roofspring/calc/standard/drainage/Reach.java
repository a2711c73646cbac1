package org.roofspring.calc.standard.drainage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.roofspring.site.Gutter;
import org.roofspring.site.GutterOutlet;

/**
 * The stretch of a gutter that one outlet drains: to the gutter's end on its outer side, and half-way to the next
 * outlet on its inner side, falling to the outlet from both.
 *
 * @param outlet   in the site
 * @param longestM the longer of its sides
 * @param wholeM   both sides together
 * @param sides    from which water comes, 1 or 2
 */
record Reach(GutterOutlet outlet, double longestM, double wholeM, int sides) {
    private static final double NOTHING_M = 1e-9;

    /** @throws IllegalArgumentException when an outlet lies beyond the gutter, or two in one place */
    static List<Reach> of(Gutter gutter) {
        double lengthM = gutter.getLength().si();
        List<GutterOutlet> outlets = gutter.getOutlets().stream()
                .sorted(Comparator.comparingDouble(outlet -> place(outlet, lengthM))).toList();
        List<Reach> reaches = new ArrayList<>();
        for (int i = 0; i < outlets.size(); i++) {
            double at = place(outlets.get(i), lengthM);
            if (at > lengthM) {
                throw new IllegalArgumentException("an outlet lies at " + at + " m along a gutter of " + lengthM
                        + " m");
            }
            double above = i == 0 ? at : (at - place(outlets.get(i - 1), lengthM)) / 2;
            double below = i == outlets.size() - 1 ? lengthM - at : (place(outlets.get(i + 1), lengthM) - at) / 2;
            if (i > 0 && above < NOTHING_M) {
                throw new IllegalArgumentException("two outlets lie in one place, " + at + " m along the gutter");
            }
            int sides = above > NOTHING_M && below > NOTHING_M ? 2 : 1;
            reaches.add(new Reach(outlets.get(i), Math.max(above, below), above + below, sides));
        }
        return reaches;
    }

    private static double place(GutterOutlet outlet, double lengthM) {
        return outlet.getPosition() == null ? lengthM : outlet.getPosition().si();
    }
}

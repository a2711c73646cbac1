package org.roofspring.ui.parts.storage;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

/** Puts words beside marks where they cover neither each other nor another mark. */
final class LabelPlacer {
    private static final int GAP = 6;

    private final Pen pen;
    private final Rectangle bounds;
    private final List<Rectangle> taken = new ArrayList<>();

    /** @param bounds within which the words stay */
    LabelPlacer(Pen pen, Rectangle bounds) {
        this.pen = pen;
        this.bounds = bounds;
    }

    /** Keeps words off an area. */
    void keepOff(Rectangle area) {
        taken.add(area);
    }

    /** Writes words beside a point, in the ink of the pen; leaves them out where there is no room. */
    void put(String words, int x, int y) {
        Point size = pen.size(words);
        int middle = y - size.y / 2;
        int[][] tries = { { x + GAP, middle }, { x - GAP - size.x, middle }, { x - size.x / 2, y - size.y - GAP },
            { x - size.x / 2, y + GAP }, { x + GAP, y + GAP }, { x - GAP - size.x, y + GAP },
            { x + GAP, y - size.y - GAP }, { x - GAP - size.x, y - size.y - GAP }, { x + GAP, y + size.y + GAP },
            { x + GAP, y + 2 * size.y + GAP }, { x - GAP - size.x, y + size.y + GAP } };
        for (int[] at : tries) {
            Rectangle area = new Rectangle(at[0], at[1], size.x, size.y);
            boolean inside = bounds.contains(area.x, area.y)
                    && bounds.contains(area.x + area.width - 1, area.y + area.height - 1);
            if (inside && taken.stream().noneMatch(area::intersects)) {
                pen.text(words, area.x, area.y);
                taken.add(area);
                return;
            }
        }
    }
}

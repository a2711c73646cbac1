package org.roofspring.ui.parts.storage;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

/** Puts words beside marks where they cover neither each other nor another mark. */
final class LabelPlacer {
    private static final int GAP = 8;
    /** So many of the places tried touch the mark. */
    private static final int BESIDE = 8;

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

    /**
     * Writes words beside a point, in the ink of the pen, with a line to it where they stand away from it; leaves them
     * out where there is no room.
     */
    void put(String words, int x, int y) {
        Point size = pen.size(words);
        int right = x + GAP;
        int left = x - GAP - size.x;
        int middle = x - size.x / 2;
        int[][] tries = { { right, y - size.y / 2 }, { left, y - size.y / 2 }, { middle, y - size.y - GAP },
            { middle, y + GAP }, { right, y - size.y - GAP }, { left, y - size.y - GAP }, { right, y + GAP },
            { left, y + GAP }, { middle, y - 2 * size.y - GAP }, { right, y - 2 * size.y - GAP },
            { left, y - 2 * size.y - GAP }, { middle, y + 2 * size.y }, { right, y + 2 * size.y },
            { left, y + 2 * size.y }, { right, y + 3 * size.y }, { left, y + 3 * size.y } };
        for (int i = 0; i < tries.length; i++) {
            Rectangle area = new Rectangle(tries[i][0], tries[i][1], size.x, size.y);
            boolean inside = bounds.contains(area.x, area.y)
                    && bounds.contains(area.x + area.width - 1, area.y + area.height - 1);
            if (inside && taken.stream().noneMatch(area::intersects)) {
                if (i >= BESIDE) {
                    pen.line(x, y, Math.clamp(x, area.x, area.x + area.width),
                            area.y > y ? area.y : area.y + area.height);
                }
                pen.text(words, area.x, area.y);
                taken.add(area);
                return;
            }
        }
    }
}

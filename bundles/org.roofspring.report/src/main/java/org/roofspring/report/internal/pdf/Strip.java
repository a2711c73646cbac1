package org.roofspring.report.internal.pdf;

import java.io.IOException;
import java.util.List;

/**
 * A piece of a page that is not broken.
 *
 * @param height       in points
 * @param gap          space before it, dropped at the head of a page
 * @param keepWithNext whether it must not stand last on a page
 * @param header       what is repeated above it where a page begins with it, or null
 * @param ids          that lead to it
 * @param painter      paints it
 */
record Strip(double height, double gap, boolean keepWithNext, Strip header, List<String> ids, Painter painter) {

    /** Paints a strip with its upper left corner at a place. */
    interface Painter {
        void paint(Canvas canvas, double x, double top) throws IOException;
    }

    Strip {
        ids = List.copyOf(ids);
    }

    static Strip of(double height, double gap, Painter painter) {
        return new Strip(height, gap, false, null, List.of(), painter);
    }

    Strip keptWithNext() {
        return new Strip(height, gap, true, header, ids, painter);
    }

    Strip under(Strip repeated) {
        return new Strip(height, gap, keepWithNext, repeated, ids, painter);
    }

    Strip withIds(List<String> more) {
        return new Strip(height, gap, keepWithNext, header, more, painter);
    }
}

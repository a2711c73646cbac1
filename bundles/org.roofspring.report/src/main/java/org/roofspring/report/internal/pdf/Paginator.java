package org.roofspring.report.internal.pdf;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Puts strips on pages, in one column or two, from top to bottom. */
final class Paginator {
    /** A strip at its place. */
    record Placed(Strip strip, double x, double top) {
    }

    private static final double COLUMN_SPACE = 18;

    private final double left;
    private final double top;
    private final double width;
    private final double height;
    private final List<List<Placed>> pages = new ArrayList<>();
    private final Map<String, Integer> pageOf = new HashMap<>();
    private final Map<String, Double> topOf = new HashMap<>();
    private int columns = 1;
    private int column;
    private double used;

    /** The area of a page that may be filled; {@code top} is its upper edge. */
    Paginator(double left, double top, double width, double height) {
        this.left = left;
        this.top = top;
        this.width = width;
        this.height = height;
        pages.add(new ArrayList<>());
    }

    List<List<Placed>> pages() {
        return pages;
    }

    int pageOf(String id) {
        return pageOf.getOrDefault(id, 0);
    }

    double topOf(String id) {
        return topOf.getOrDefault(id, top);
    }

    double columnWidth(int count) {
        return (width - (count - 1) * COLUMN_SPACE) / count;
    }

    double areaHeight() {
        return height;
    }

    /** What follows stands in so many columns, on a new page where that changes. */
    void columns(int count) {
        if (count != columns) {
            newPage();
            columns = count;
        }
    }

    /** A new page, unless this one is still empty. */
    void newPage() {
        if (!pages.get(pages.size() - 1).isEmpty()) {
            pages.add(new ArrayList<>());
        }
        column = 0;
        used = 0;
    }

    private void newColumn() {
        if (column + 1 < columns) {
            column++;
            used = 0;
        } else {
            newPage();
        }
    }

    void add(List<Strip> strips) {
        for (int i = 0; i < strips.size(); i++) {
            double needed = (used == 0 ? 0 : strips.get(i).gap()) + together(strips, i);
            if (used > 0 && used + needed > height) {
                newColumn();
            }
            Strip strip = strips.get(i);
            if (used == 0 && strip.header() != null) {
                place(strip.header());
            }
            if (used > 0) {
                used += strip.gap();
            }
            place(strip);
        }
    }

    /** Height of a strip with those that it must not be parted from, as far as a column can hold them. */
    private double together(List<Strip> strips, int from) {
        double sum = strips.get(from).height();
        for (int i = from; i < strips.size() - 1 && strips.get(i).keepWithNext(); i++) {
            double more = strips.get(i + 1).gap() + strips.get(i + 1).height();
            if (sum + more > height) {
                break;
            }
            sum += more;
        }
        return sum;
    }

    private void place(Strip strip) {
        double x = left + column * (columnWidth(columns) + COLUMN_SPACE);
        double y = top - used;
        pages.get(pages.size() - 1).add(new Placed(strip, x, y));
        for (String id : strip.ids()) {
            pageOf.putIfAbsent(id, pages.size());
            topOf.putIfAbsent(id, y);
        }
        used += strip.height();
    }
}

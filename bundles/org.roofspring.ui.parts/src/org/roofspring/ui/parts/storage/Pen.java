package org.roofspring.ui.parts.storage;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.Transform;
import org.roofspring.ui.look.Palette;

/** Draws for a plot; while the plot is out of date, everything in grey. */
final class Pen {
    private static final RGB WHITE = new RGB(255, 255, 255);

    private final GC gc;
    private final Palette palette;
    private final boolean stale;

    Pen(GC gc, Palette palette, boolean stale) {
        this.gc = gc;
        this.palette = palette;
        this.stale = stale;
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
    }

    GC gc() {
        return gc;
    }

    Palette palette() {
        return palette;
    }

    private Color shade(RGB rgb) {
        if (!stale) {
            return new Color(rgb);
        }
        // lighter than the colour's own grey, so that it is seen to have lost weight
        int grey = (int) Math.round(255 * (0.25 + 0.75 * Math.pow(Ramp.luminance(rgb), 1 / 2.2)));
        return new Color(grey, grey, grey);
    }

    Pen ink(RGB rgb) {
        gc.setForeground(shade(rgb));
        gc.setBackground(shade(rgb));
        return this;
    }

    Pen ink(Color color) {
        return ink(color.getRGB());
    }

    /** Ink for words on a colour: dark on light, light on dark. */
    Pen inkOn(RGB ground) {
        return ink(Ramp.luminance(ground) > 0.35 ? new RGB(0x20, 0x28, 0x30) : WHITE);
    }

    void fill(Rectangle area) {
        gc.fillRectangle(area);
    }

    void fill(int... points) {
        gc.fillPolygon(points);
    }

    void frame(Rectangle area) {
        gc.drawRectangle(area);
    }

    void line(int x1, int y1, int x2, int y2) {
        gc.drawLine(x1, y1, x2, y2);
    }

    void line(int width, int... points) {
        gc.setLineWidth(width);
        gc.drawPolyline(points);
        gc.setLineWidth(1);
    }

    void dashed(int x1, int y1, int x2, int y2) {
        gc.setLineStyle(SWT.LINE_DASH);
        gc.drawLine(x1, y1, x2, y2);
        gc.setLineStyle(SWT.LINE_SOLID);
    }

    /** Slanting lines across an area. */
    void hatch(Rectangle area) {
        Rectangle before = gc.getClipping();
        gc.setClipping(area.intersection(before));
        for (int x = area.x - area.height; x < area.x + area.width; x += 5) {
            gc.drawLine(x, area.y + area.height, x + area.height, area.y);
        }
        gc.setClipping(before);
    }

    Point size(String text) {
        return gc.textExtent(text);
    }

    int height() {
        return gc.getFontMetrics().getHeight();
    }

    void text(String text, int x, int y) {
        gc.drawText(text, x, y, true);
    }

    /** Words around the middle of a span, within bounds. */
    void centred(String text, int middle, int y, int least, int most) {
        int width = size(text).x;
        text(text, Math.clamp(middle - width / 2, least, Math.max(least, most - width)), y);
    }

    /** Words from the right end on. */
    void right(String text, int end, int y) {
        text(text, end - size(text).x, y);
    }

    /** Words that run upwards, around a middle. */
    void upwards(String text, int x, int middle) {
        Transform turned = new Transform(gc.getDevice());
        gc.getTransform(turned);
        turned.translate(x, middle + size(text).x / 2f);
        turned.rotate(-90);
        gc.setTransform(turned);
        gc.drawText(text, 0, 0, true);
        turned.dispose();
        gc.setTransform(null);
    }
}

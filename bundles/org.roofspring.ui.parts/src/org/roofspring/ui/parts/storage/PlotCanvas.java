package org.roofspring.ui.parts.storage;

import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.session.FindingKey;

/**
 * Shows a plot. Point at a place to read it, click it to select its finding; the arrow keys walk from place to place,
 * Enter brings up the workings.
 */
final class PlotCanvas {
    private static final int MARGIN = 8;
    private static final int LEAST_PICTURE_WIDTH = 900;
    private static final int LEAST_PICTURE_HEIGHT = 560;

    private final Canvas canvas;
    private final Palette palette;
    private final Consumer<String> reader;
    private final Consumer<FindingKey> selected;
    private final Runnable open;
    private Plot plot;
    private boolean stale;
    private Point place;

    /**
     * @param reader   told the words of the place that is read, or null
     * @param selected told the finding of a place that was clicked
     * @param open     told when the workings are to be brought up
     */
    PlotCanvas(Composite parent, Consumer<String> reader, Consumer<FindingKey> selected, Runnable open) {
        this.reader = reader;
        this.selected = selected;
        this.open = open;
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED);
        palette = Palette.of(canvas);
        canvas.setBackground(canvas.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
        canvas.addPaintListener(event -> paint(event.gc, canvas.getClientArea()));
        canvas.addListener(SWT.MouseMove, event -> read(at(event)));
        canvas.addListener(SWT.MouseExit, event -> read(null));
        canvas.addListener(SWT.MouseDown, event -> {
            canvas.setFocus();
            read(at(event));
            select();
        });
        canvas.addListener(SWT.MouseDoubleClick, event -> {
            if (reading().isPresent()) {
                open.run();
            }
        });
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.Traverse, event -> event.doit = event.detail != SWT.TRAVERSE_RETURN);
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = plot == null ? "" : plot.title();
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = reading().map(Reading::words).orElse("");
            }
        });
    }

    void show(Plot newPlot, boolean nowStale) {
        if (newPlot == plot && nowStale == stale) {
            return;
        }
        boolean samePlaces = plot != null && newPlot != null && plot.columns() == newPlot.columns()
                && plot.rows() == newPlot.rows();
        plot = newPlot;
        stale = nowStale;
        read(samePlaces ? place : null);
        canvas.redraw();
    }

    private void paint(GC gc, Rectangle area) {
        gc.setBackground(canvas.getBackground());
        gc.fillRectangle(area);
        if (plot == null || area.width < 120 || area.height < 80) {
            return;
        }
        Pen pen = new Pen(gc, palette, stale);
        plot.paint(pen, new Rectangle(area.x + MARGIN, area.y + MARGIN, area.width - 2 * MARGIN,
                area.height - 2 * MARGIN));
        if (place != null && reading().isPresent()) {
            Rectangle bounds = plot.bounds(place.x, place.y);
            pen.ink(palette.label());
            gc.setLineWidth(canvas.isFocusControl() ? 2 : 1);
            pen.frame(new Rectangle(bounds.x - 1, bounds.y - 1, bounds.width + 1, bounds.height + 1));
            gc.setLineWidth(1);
        }
    }

    private Point at(Event event) {
        return plot == null ? null : plot.placeAt(event.x, event.y);
    }

    private Optional<Reading> reading() {
        return plot == null || place == null ? Optional.empty() : plot.reading(place.x, place.y);
    }

    private void read(Point newPlace) {
        place = newPlace;
        String words = reading().map(Reading::words).orElse(null);
        reader.accept(words);
        canvas.redraw();
    }

    private void select() {
        reading().map(Reading::finding).ifPresent(selected);
    }

    private void key(Event event) {
        if (plot == null || plot.columns() == 0) {
            return;
        }
        Point from = place == null ? new Point(0, 0) : place;
        Point to = place == null ? from : switch (event.keyCode) {
            case SWT.ARROW_LEFT -> new Point(from.x - 1, from.y);
            case SWT.ARROW_RIGHT -> new Point(from.x + 1, from.y);
            case SWT.ARROW_UP -> new Point(from.x, from.y - 1);
            case SWT.ARROW_DOWN -> new Point(from.x, from.y + 1);
            case SWT.HOME -> new Point(0, from.y);
            case SWT.END -> new Point(plot.columns() - 1, from.y);
            default -> from;
        };
        read(new Point(Math.clamp(to.x, 0, plot.columns() - 1), Math.clamp(to.y, 0, plot.rows() - 1)));
        if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
            select();
            open.run();
        }
    }

    /** The plot as a picture, large enough to be put into a document; the caller disposes of it. */
    Image picture() {
        Point size = canvas.getSize();
        Rectangle area = new Rectangle(0, 0, Math.max(LEAST_PICTURE_WIDTH, size.x),
                Math.max(LEAST_PICTURE_HEIGHT, size.y));
        Image image = new Image(canvas.getDisplay(), area.width, area.height);
        GC gc = new GC(image);
        Point read = place;
        place = null;
        gc.setFont(canvas.getFont());
        paint(gc, area);
        gc.dispose();
        place = read;
        // the plot remembers where it was painted last
        canvas.redraw();
        return image;
    }

    Canvas control() {
        return canvas;
    }
}

package org.roofspring.report.internal.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Map;

import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDBorderStyleDictionary;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDNamedDestination;
import org.apache.pdfbox.util.Matrix;
import org.roofspring.drawing.Colour;
import org.roofspring.drawing.Typeface;

/**
 * A page to paint on, in points from its lower left corner as PDF has it; may be scaled about its upper left corner.
 */
final class Canvas {
    private final PDPageContentStream stream;
    private final Map<Typeface, PDFont> fonts;
    private final Pages pages;
    private final List<PDAnnotation> links;
    private double scale = 1;
    private long texts;
    private double originX;
    private double originY;

    /** What is known once all strips are on pages. */
    interface Pages {
        /** Number of the page, from 1, on which an id stands; 0 where there is no such id. */
        int pageOf(String id);
    }

    /** @param links receives the links of the page */
    Canvas(PDPageContentStream stream, Map<Typeface, PDFont> fonts, Pages pages, List<PDAnnotation> links) {
        this.links = links;
        this.stream = stream;
        this.fonts = fonts;
        this.pages = pages;
    }

    /** A number that changes with the texts on the page, the same in every run. */
    long texts() {
        return texts;
    }

    Pages pages() {
        return pages;
    }

    /** Scales whatever is painted inside about a point. */
    void scaled(double factor, double x, double top, Strip.Painter inside) throws IOException {
        stream.saveGraphicsState();
        stream.transform(new Matrix((float) factor, 0, 0, (float) factor, (float) (x * (1 - factor)),
                (float) (top * (1 - factor))));
        double oldScale = scale;
        scale = oldScale * factor;
        originX = originX + oldScale * x * (1 - factor);
        originY = originY + oldScale * top * (1 - factor);
        inside.paint(this, x, top);
        originX = originX - oldScale * x * (1 - factor);
        originY = originY - oldScale * top * (1 - factor);
        scale = oldScale;
        stream.restoreGraphicsState();
    }

    void text(double x, double base, String text, Typeface face, double size, Colour colour) throws IOException {
        turned(x, base, text, face, size, colour, 0);
    }

    /** @param degrees anticlockwise */
    void turned(double x, double base, String text, Typeface face, double size, Colour colour,
            double degrees) throws IOException {
        if (text.isBlank()) {
            return;
        }
        stream.beginText();
        stream.setFont(fonts.get(face), (float) size);
        fill(colour);
        if (degrees == 0) {
            stream.newLineAtOffset((float) x, (float) base);
        } else {
            stream.setTextMatrix(Matrix.getRotateInstance(Math.toRadians(degrees), (float) x, (float) base));
        }
        stream.showText(text);
        texts = 31 * texts + text.hashCode();
        stream.endText();
    }

    void fill(Colour colour) throws IOException {
        stream.setNonStrokingColor(colour.red() / 255f, colour.green() / 255f, colour.blue() / 255f);
    }

    void stroke(Colour colour, double width, List<Double> dashes) throws IOException {
        stream.setStrokingColor(colour.red() / 255f, colour.green() / 255f, colour.blue() / 255f);
        stream.setLineWidth((float) width);
        float[] pattern = new float[dashes.size()];
        for (int i = 0; i < pattern.length; i++) {
            pattern[i] = dashes.get(i).floatValue();
        }
        stream.setLineDashPattern(pattern, 0);
    }

    /** A filled rectangle with its upper left corner at (x, top). */
    void box(double x, double top, double width, double height, Colour colour) throws IOException {
        fill(colour);
        stream.addRect((float) x, (float) (top - height), (float) width, (float) height);
        stream.fill();
    }

    void line(double fromX, double fromY, double toX, double toY, Colour colour, double width) throws IOException {
        stroke(colour, width, List.of());
        stream.moveTo((float) fromX, (float) fromY);
        stream.lineTo((float) toX, (float) toY);
        stream.stroke();
    }

    PDPageContentStream stream() {
        return stream;
    }

    /** Makes a rectangle lead to an id, if there is one. */
    void link(double x, double top, double width, double height, String id) {
        if (id.isEmpty() || pages.pageOf(id) == 0) {
            return;
        }
        PDAnnotationLink link = new PDAnnotationLink();
        link.setRectangle(new PDRectangle((float) (originX + scale * x), (float) (originY + scale * (top - height)),
                (float) (scale * width), (float) (scale * height)));
        PDBorderStyleDictionary border = new PDBorderStyleDictionary();
        border.setWidth(0);
        link.setBorderStyle(border);
        PDActionGoTo action = new PDActionGoTo();
        action.setDestination(new PDNamedDestination(id));
        link.setAction(action);
        links.add(link);
    }
}

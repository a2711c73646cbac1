package org.roofspring.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * Writes a drawing as SVG 1.1: text as text, nothing fetched, the same drawing always the same characters. Made to
 * stand
 * inside an HTML page or, with {@link #document}, as a file of its own.
 */
public final class SvgWriter {
    /** Fonts of nearly the same width follow the one that the text was measured with. */
    private static final String FAMILY = "'DejaVu Sans Condensed','DejaVu Sans',Arial,Helvetica,sans-serif";

    private final StringBuilder out = new StringBuilder();
    private final String prefix;
    private int clips;

    private SvgWriter(String prefix) {
        this.prefix = prefix;
    }

    /**
     * An element for an HTML page.
     *
     * @param prefix begins every id in it, so that several drawings can stand on one page
     */
    public static String element(Drawing drawing, String prefix) {
        SvgWriter writer = new SvgWriter(prefix);
        writer.write(drawing, "");
        return writer.out.toString();
    }

    /** A file of its own. */
    public static String document(Drawing drawing) {
        SvgWriter writer = new SvgWriter("drawing");
        writer.write(drawing, " xmlns=\"http://www.w3.org/2000/svg\"");
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + writer.out + "\n";
    }

    private void write(Drawing drawing, String namespace) {
        String described = drawing.description().isEmpty() ? "" : " " + prefix + "-desc";
        out.append("<svg").append(namespace).append(" viewBox=\"0 0 ").append(number(drawing.width())).append(' ')
                .append(number(drawing.height())).append("\" role=\"img\" aria-labelledby=\"").append(prefix)
                        .append("-title")
                .append(described).append("\" font-family=\"").append(FAMILY).append("\">");
        out.append("<title id=\"").append(prefix).append("-title\">").append(escape(drawing.title()))
                .append("</title>");
        if (!described.isEmpty()) {
            out.append("<desc id=\"").append(prefix).append("-desc\">").append(escape(drawing.description()))
                    .append("</desc>");
        }
        drawing.shapes().forEach(this::write);
        out.append("</svg>");
    }

    private void write(Shape shape) {
        switch (shape) {
            case Shape.Rect rect -> {
                out.append("<rect");
                box(rect);
                style(rect.style());
                out.append("/>");
            }
            case Shape.Line line -> {
                out.append("<line");
                attribute("x1", line.from().x());
                attribute("y1", line.from().y());
                attribute("x2", line.to().x());
                attribute("y2", line.to().y());
                style(line.style());
                out.append("/>");
            }
            case Shape.Polyline polyline -> {
                out.append("<polyline points=\"");
                separated(polyline.points());
                out.append('"');
                style(polyline.style());
                out.append("/>");
            }
            case Shape.Path path -> write(path);
            case Shape.Text text -> write(text);
            case Shape.Group group -> {
                out.append("<g>");
                group.shapes().forEach(this::write);
                out.append("</g>");
            }
            case Shape.Clip clip -> {
                String id = prefix + "-clip" + ++clips;
                out.append("<clipPath id=\"").append(id).append("\"><rect");
                box(clip.area());
                out.append("/></clipPath><g clip-path=\"url(#").append(id).append(")\">");
                clip.shapes().forEach(this::write);
                out.append("</g>");
            }
        }
    }

    private void write(Shape.Path path) {
        out.append("<path d=\"");
        for (Shape.Piece piece : path.pieces()) {
            switch (piece) {
                case Shape.Move move -> out.append('M').append(point(move.to()));
                case Shape.LineTo line -> out.append('L').append(point(line.to()));
                case Shape.CurveTo curve -> out.append('C').append(point(curve.firstControl())).append(' ')
                        .append(point(curve.secondControl())).append(' ').append(point(curve.to()));
                case Shape.Close close -> out.append('Z');
            }
        }
        out.append('"');
        style(path.style());
        out.append("/>");
    }

    private void write(Shape.Text text) {
        out.append("<text");
        attribute("x", text.at().x());
        attribute("y", text.at().y());
        attribute("font-size", text.size());
        out.append(" fill=\"").append(text.colour().hex()).append('"');
        if (text.typeface() == Typeface.BOLD) {
            out.append(" font-weight=\"bold\"");
        }
        if (text.anchor() != Shape.Anchor.START) {
            out.append(" text-anchor=\"").append(text.anchor() == Shape.Anchor.END ? "end" : "middle").append('"');
        }
        if (text.turn() != 0) {
            out.append(" transform=\"rotate(").append(number(text.turn())).append(' ')
                    .append(point(text.at())).append(")\"");
        }
        out.append('>').append(escape(text.text())).append("</text>");
    }

    private void box(Shape.Rect rect) {
        attribute("x", rect.x());
        attribute("y", rect.y());
        attribute("width", Math.max(0, rect.width()));
        attribute("height", Math.max(0, rect.height()));
    }

    private void style(Style style) {
        out.append(" fill=\"").append(style.fill() == null ? "none" : style.fill().hex()).append('"');
        if (style.stroke() != null) {
            out.append(" stroke=\"").append(style.stroke().hex()).append('"');
            attribute("stroke-width", style.width());
            if (!style.dashes().isEmpty()) {
                out.append(" stroke-dasharray=\"");
                for (int i = 0; i < style.dashes().size(); i++) {
                    out.append(i == 0 ? "" : " ").append(number(style.dashes().get(i)));
                }
                out.append('"');
            }
        }
    }

    private void separated(List<Point> points) {
        for (int i = 0; i < points.size(); i++) {
            out.append(i == 0 ? "" : " ").append(point(points.get(i)));
        }
    }

    private void attribute(String name, double value) {
        out.append(' ').append(name).append("=\"").append(number(value)).append('"');
    }

    private static String point(Point point) {
        return number(point.x()) + " " + number(point.y());
    }

    /** Hundredths of a point are finer than any print. */
    private static String number(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e9) {
            return Long.toString((long) value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    private static String escape(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            switch (c) {
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '&' -> escaped.append("&amp;");
                case '"' -> escaped.append("&quot;");
                default -> {
                    if (c >= ' ' && c != 0x7f || c == '\t') {
                        escaped.appendCodePoint(c);
                    }
                }
            }
        });
        return escaped.toString();
    }
}

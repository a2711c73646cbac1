package org.roofspring.report.internal.pdf;

import java.io.IOException;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.roofspring.drawing.Drawing;
import org.roofspring.drawing.Point;
import org.roofspring.drawing.Shape;
import org.roofspring.drawing.Style;

/** Replays a drawing on a page. */
final class ShapePainter {
    private final Canvas canvas;
    private final PDPageContentStream stream;
    private final double x;
    private final double top;
    private final double scale;

    private ShapePainter(Canvas canvas, double x, double top, double scale) {
        this.canvas = canvas;
        this.stream = canvas.stream();
        this.x = x;
        this.top = top;
        this.scale = scale;
    }

    static void paint(Drawing drawing, Canvas canvas, double x, double top, double scale) throws IOException {
        new ShapePainter(canvas, x, top, scale).paint(drawing.shapes());
    }

    private void paint(List<Shape> shapes) throws IOException {
        for (Shape shape : shapes) {
            paint(shape);
        }
    }

    private void paint(Shape shape) throws IOException {
        switch (shape) {
            case Shape.Rect rect -> {
                rectangle(rect);
                finish(rect.style());
            }
            case Shape.Line line -> {
                moveTo(line.from());
                lineTo(line.to());
                finish(line.style());
            }
            case Shape.Polyline polyline -> {
                if (polyline.points().size() > 1) {
                    moveTo(polyline.points().get(0));
                    for (Point point : polyline.points().subList(1, polyline.points().size())) {
                        lineTo(point);
                    }
                    finish(polyline.style());
                }
            }
            case Shape.Path path -> {
                for (Shape.Piece piece : path.pieces()) {
                    paint(piece);
                }
                if (!path.pieces().isEmpty()) {
                    finish(path.style());
                }
            }
            case Shape.Text text -> paint(text);
            case Shape.Group group -> paint(group.shapes());
            case Shape.Clip clip -> {
                stream.saveGraphicsState();
                rectangle(clip.area());
                stream.clip();
                paint(clip.shapes());
                stream.restoreGraphicsState();
            }
        }
    }

    private void paint(Shape.Piece piece) throws IOException {
        switch (piece) {
            case Shape.Move move -> moveTo(move.to());
            case Shape.LineTo line -> lineTo(line.to());
            case Shape.CurveTo curve -> stream.curveTo(px(curve.firstControl()), py(curve.firstControl()),
                    px(curve.secondControl()),
                    py(curve.secondControl()), px(curve.to()), py(curve.to()));
            case Shape.Close close -> stream.closePath();
        }
    }

    private void paint(Shape.Text text) throws IOException {
        String printable = TextLines.printable(text.text(), text.typeface()).replace('\n', ' ');
        double size = text.size() * scale;
        double width = text.typeface().width(printable, size);
        double back = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        double angle = Math.toRadians(-text.turn());
        canvas.turned(px(text.at()) - back * Math.cos(angle), py(text.at()) - back * Math.sin(angle), printable,
                text.typeface(),
                size, text.colour(), -text.turn());
    }

    private void rectangle(Shape.Rect rect) throws IOException {
        Point corner = new Point(rect.x(), rect.y() + rect.height());
        stream.addRect(px(corner), py(corner), (float) (rect.width() * scale), (float) (rect.height() * scale));
    }

    private void finish(Style style) throws IOException {
        if (style.fill() != null) {
            canvas.fill(style.fill());
        }
        if (style.stroke() != null) {
            canvas.stroke(style.stroke(), style.width() * scale, style.dashes().stream().map(d -> d * scale).toList());
        }
        if (style.fill() != null && style.stroke() != null) {
            stream.fillAndStroke();
        } else if (style.fill() != null) {
            stream.fill();
        } else if (style.stroke() != null) {
            stream.stroke();
        }
    }

    private void moveTo(Point point) throws IOException {
        stream.moveTo(px(point), py(point));
    }

    private void lineTo(Point point) throws IOException {
        stream.lineTo(px(point), py(point));
    }

    private float px(Point point) {
        return (float) (x + point.x() * scale);
    }

    private float py(Point point) {
        return (float) (top - point.y() * scale);
    }
}

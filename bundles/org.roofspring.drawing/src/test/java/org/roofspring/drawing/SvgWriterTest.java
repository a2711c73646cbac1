package org.roofspring.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.List;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

class SvgWriterTest {
    private static final Style INK = Style.line(Colour.BLACK, 1);

    /** One of each kind of shape. */
    private static Drawing everyKind() {
        return new Drawing(100, 50, "A & B", "less < more", List.of(
                new Shape.Rect(1, 2, 3.456, 4, Style.filled(Colour.of(0x102030))),
                new Shape.Line(new Point(0, 0), new Point(1, 1), INK.dashed(2.0, 1.5)),
                new Shape.Polyline(List.of(new Point(0, 0), new Point(1, 2), new Point(3, 4)), INK),
                new Shape.Path(List.of(new Shape.Move(new Point(0, 0)), new Shape.LineTo(new Point(1, 0)),
                        new Shape.CurveTo(new Point(1, 1), new Point(2, 1), new Point(2, 2)), new Shape.Close()), INK),
                new Shape.Text(new Point(5, 6), "a \"b\" <c>\u0007", 8, Typeface.BOLD, Colour.BLACK,
                        Shape.Anchor.MIDDLE, -90),
                new Shape.Group(List.of(new Shape.Clip(new Shape.Rect(0, 0, 9, 9, INK),
                        List.of(new Shape.Line(new Point(0, 0), new Point(9, 9), INK)))))));
    }

    @Test
    void isWellFormedAndSaysWhatItIs() throws Exception {
        Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(SvgWriter.document(everyKind()))));
        assertEquals("A & B", document.getElementsByTagName("title").item(0).getTextContent());
        assertEquals("less < more", document.getElementsByTagName("desc").item(0).getTextContent());
        assertEquals("a \"b\" <c>", document.getElementsByTagName("text").item(0).getTextContent());
        assertEquals("0 0 100 50", document.getDocumentElement().getAttribute("viewBox"));
        assertEquals("3.46", attribute(document, "rect", 0, "width"));
        assertEquals("M0 0L1 0C1 1 2 1 2 2Z",
                attribute(document, "path", 0, "d"));
        assertEquals("url(#drawing-clip1)",
                attribute(document, "g", 1, "clip-path"));
    }

    private static String attribute(Document document, String tag, int index, String name) {
        return ((Element) document.getElementsByTagName(tag).item(index)).getAttribute(name);
    }

    @Test
    void sameDrawingSameCharacters() {
        assertEquals(SvgWriter.element(everyKind(), "a"), SvgWriter.element(everyKind(), "a"));
        assertFalse(SvgWriter.element(everyKind(), "a").contains("http"));
        assertTrue(SvgWriter.element(everyKind(), "fig3").contains("id=\"fig3-clip1\""));
    }

    @Test
    void refusesWhatCannotBeDrawn() {
        assertThrows(IllegalArgumentException.class, () -> new Point(Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new Drawing(0, 10, "", "", List.of()));
        assertThrows(IllegalArgumentException.class, () -> new Shape.Rect(0, 0, Double.POSITIVE_INFINITY, 1, INK));
        assertThrows(IllegalArgumentException.class, () -> new Shape.Path(List.of(new Shape.Close()), INK));
        assertThrows(IllegalArgumentException.class, () -> Style.line(Colour.BLACK, -1));
        assertThrows(IllegalArgumentException.class, () -> new Colour(0, 0, 256));
    }
}

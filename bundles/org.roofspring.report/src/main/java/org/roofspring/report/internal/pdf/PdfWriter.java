package org.roofspring.report.internal.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Map;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.roofspring.drawing.Colours;
import org.roofspring.drawing.Typeface;
import org.roofspring.report.Block;
import org.roofspring.report.ReportDocument;

/** Writes one report: lays it out, then paints it page by page. */
public final class PdfWriter {
    private static final PDRectangle PAGE = PDRectangle.A4;
    private static final double MARGIN = 48;
    private static final double FOOT = 42;
    /** A card is made as large as its page, from this scale downwards in steps. */
    private static final double LARGEST_CARD = 1.7;
    private static final double CARD_STEP = 0.97;

    private final ReportDocument report;
    private final Paginator paginator = new Paginator(MARGIN, PAGE.getHeight() - MARGIN, PAGE.getWidth() - 2 * MARGIN,
            PAGE.getHeight() - 2 * MARGIN - 8);
    private final List<Block.Heading> outline = new ArrayList<>();
    private long texts;

    public PdfWriter(ReportDocument report) {
        this.report = report;
    }

    /** The whole file. */
    public byte[] write() throws IOException {
        layOut();
        try (PDDocument document = new PDDocument(); ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 20)) {
            Map<Typeface, PDFont> fonts = fonts(document);
            for (int i = 0; i < paginator.pages().size(); i++) {
                document.addPage(new PDPage(PAGE));
            }
            for (int i = 0; i < paginator.pages().size(); i++) {
                paint(document, i, fonts);
            }
            describe(document);
            outline(document);
            destinations(document);
            document.save(out);
            return out.toByteArray();
        }
    }

    private void layOut() {
        Typesetter wide = new Typesetter(paginator.columnWidth(1));
        paginator.add(titleBlock());
        List<Strip> flow = new ArrayList<>();
        Typesetter setter = wide;
        for (Block block : report.blocks()) {
            if (block instanceof Block.PageBreak || block instanceof Block.Card) {
                paginator.add(flow);
                flow.clear();
                paginator.newPage();
            }
            if (block instanceof Block.Card card) {
                paginator.add(List.of(card(card)));
                paginator.newPage();
            }
            if (block instanceof Block.Heading heading) {
                if (heading.level() <= 2) {
                    outline.add(heading);
                }
                if (heading.id().equals("workings")) {
                    // the appendix is long and its lines are short
                    paginator.add(flow);
                    flow.clear();
                    paginator.columns(2);
                    setter = new Typesetter(paginator.columnWidth(2));
                }
            }
            flow.addAll(setter.strips(block));
        }
        paginator.add(flow);
    }

    private List<Strip> titleBlock() {
        List<Strip> strips = new ArrayList<>();
        double width = paginator.columnWidth(1);
        for (String line : TextLines.of(report.title(), Typeface.BOLD, 24, width)) {
            strips.add(Strip.of(30, strips.isEmpty() ? 0 : 2, (canvas, x, top) -> canvas.text(x, top - 23, line,
                    Typeface.BOLD, 24, Colours.INK)));
        }
        for (String line : TextLines.of(report.subtitle() + "\nDesign report of " + report.date(), Typeface.REGULAR,
                10.5, width)) {
            strips.add(Strip.of(15, 0, (canvas, x, top) -> canvas.text(x, top - 11, line, Typeface.REGULAR, 10.5,
                    Colours.FAINT_INK)));
        }
        strips.add(contents(width));
        return strips;
    }

    /** Chapters with their pages, in two columns. */
    private Strip contents(double width) {
        List<Block.Heading> chapters = report.blocks().stream()
                .filter(Block.Heading.class::isInstance).map(Block.Heading.class::cast)
                .filter(heading -> heading.level() == 1 && !heading.id().isEmpty()).toList();
        int rows = (chapters.size() + 1) / 2;
        double column = (width - 24) / 2;
        return Strip.of(rows * 13 + 10, 14, (canvas, x, top) -> {
            canvas.line(x, top, x + width, top, Colours.WATER, 1.2);
            for (int i = 0; i < chapters.size(); i++) {
                Block.Heading chapter = chapters.get(i);
                double left = x + i / rows * (column + 24);
                double base = top - 15 - i % rows * 13;
                String page = Integer.toString(canvas.pages().pageOf(chapter.id()));
                canvas.text(left, base, TextLines.printable(chapter.text(), Typeface.REGULAR), Typeface.REGULAR, 9,
                        Colours.INK);
                canvas.text(left + column - Typeface.REGULAR.width(page, 9), base, page, Typeface.REGULAR, 9,
                        Colours.INK);
                canvas.link(left, base + 9, column, 12, chapter.id());
            }
        });
    }

    /** A card as one strip: set ever wider and painted smaller until it stands on a page. */
    private Strip card(Block.Card card) {
        double width = paginator.columnWidth(1);
        double height = paginator.areaHeight();
        double scale = LARGEST_CARD;
        while (true) {
            Paginator inner = new Paginator(10, 0, width / scale - 20, Double.MAX_VALUE);
            Typesetter setter = new Typesetter(width / scale - 20);
            List<Strip> strips = new ArrayList<>(setter.strips(new Block.Heading(1, card.title(), "")));
            card.blocks().forEach(block -> strips.addAll(setter.strips(block)));
            inner.add(strips);
            List<Paginator.Placed> placed = inner.pages().get(0);
            Paginator.Placed last = placed.get(placed.size() - 1);
            double tall = -(last.top() - last.strip().height()) + 20;
            if (tall * scale <= height) {
                double factor = scale;
                List<String> ids = placed.stream().flatMap(p -> p.strip().ids().stream()).toList();
                return Strip.of(Math.min(height, tall * scale), 0, (canvas, x, top) -> canvas.scaled(factor, x, top,
                        (inside, left, upper) -> {
                    frame(inside, left, upper, width / factor, tall);
                    for (Paginator.Placed part : placed) {
                        part.strip().painter().paint(inside, left + part.x(), upper - 8 + part.top());
                    }
                })).withIds(ids);
            }
            scale *= CARD_STEP;
        }
    }

    private static void frame(Canvas canvas, double x, double top, double width, double height) throws IOException {
        canvas.line(x, top, x + width, top, Colours.INK, 1.2);
        canvas.line(x, top - height, x + width, top - height, Colours.INK, 1.2);
        canvas.line(x, top, x, top - height, Colours.INK, 1.2);
        canvas.line(x + width, top, x + width, top - height, Colours.INK, 1.2);
    }

    private static Map<Typeface, PDFont> fonts(PDDocument document) throws IOException {
        Map<Typeface, PDFont> fonts = new EnumMap<>(Typeface.class);
        for (Typeface face : Typeface.values()) {
            try (InputStream stream = face.open()) {
                fonts.put(face, PDType0Font.load(document,
                        new ByteArrayInputStream(withoutLigatures(stream.readAllBytes())), true));
            }
        }
        return fonts;
    }

    /**
     * Hides the table of glyph substitutions: texts are measured letter by letter, so they must be set letter by
     * letter,
     * and reading that table takes longer than all the rest of the font.
     */
    private static byte[] withoutLigatures(byte[] font) {
        ByteBuffer bytes = ByteBuffer.wrap(font);
        int tables = bytes.getShort(4);
        for (int i = 0; i < tables; i++) {
            int entry = 12 + 16 * i;
            if (new String(font, entry, 4, StandardCharsets.US_ASCII).equals("GSUB")) {
                font[entry] = 'x';
            }
        }
        return font;
    }

    private void paint(PDDocument document, int index, Map<Typeface, PDFont> fonts) throws IOException {
        PDPage page = document.getPage(index);
        List<PDAnnotation> links = new ArrayList<>();
        try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
            Canvas canvas = new Canvas(stream, fonts, paginator::pageOf, links);
            for (Paginator.Placed placed : paginator.pages().get(index)) {
                placed.strip().painter().paint(canvas, placed.x(), placed.top());
            }
            String number = (index + 1) + " / " + paginator.pages().size();
            String title = TextLines.of(report.title() + ", design report of " + report.date(), Typeface.REGULAR, 7,
                    400).get(0);
            canvas.text(MARGIN, FOOT - 14, title, Typeface.REGULAR, 7, Colours.FAINT_INK);
            canvas.text(PAGE.getWidth() - MARGIN - Typeface.REGULAR.width(number, 7), FOOT - 14, number,
                    Typeface.REGULAR, 7, Colours.FAINT_INK);
            texts = 31 * texts + canvas.texts();
        }
        if (!links.isEmpty()) {
            page.setAnnotations(links);
        }
    }

    private void describe(PDDocument document) {
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(report.title());
        information.setSubject("Design report of a rainwater system");
        information.setCreator("Roofspring");
        information.setCreationDate(GregorianCalendar.from(report.date().atStartOfDay(ZoneOffset.UTC)));
        document.setDocumentInformation(information);
        document.getDocumentCatalog().setLanguage("en");
        // else the file is given a name from the clock; the hash code of the records would differ from run to run
        document.setDocumentId(texts);
    }

    private void outline(PDDocument document) {
        PDDocumentOutline tree = new PDDocumentOutline();
        PDOutlineItem chapter = null;
        for (Block.Heading heading : outline) {
            if (heading.id().isEmpty()) {
                continue;
            }
            PDOutlineItem item = new PDOutlineItem();
            item.setTitle(heading.text());
            item.setDestination(destination(document, heading.id()));
            if (heading.level() == 1 || chapter == null) {
                tree.addLast(item);
                chapter = item;
            } else {
                chapter.addLast(item);
            }
        }
        document.getDocumentCatalog().setDocumentOutline(tree);
    }

    private PDPageXYZDestination destination(PDDocument document, String id) {
        PDPageXYZDestination destination = new PDPageXYZDestination();
        destination.setPage(document.getPage(paginator.pageOf(id) - 1));
        destination.setLeft(0);
        destination.setTop((int) Math.ceil(Math.min(PAGE.getHeight(), paginator.topOf(id) + 6)));
        return destination;
    }

    /** The name tree by which links and other programs find every id of the report; names in order, as PDF asks. */
    private void destinations(PDDocument document) {
        COSArray names = new COSArray();
        report.ids().stream().filter(id -> paginator.pageOf(id) > 0).sorted().forEach(id -> {
            names.add(new COSString(id));
            names.add(destination(document, id).getCOSObject());
        });
        COSDictionary leaf = new COSDictionary();
        leaf.setItem(COSName.NAMES, names);
        COSDictionary tree = new COSDictionary();
        tree.setItem(COSName.DESTS, leaf);
        document.getDocumentCatalog().getCOSObject().setItem(COSName.NAMES, tree);
    }
}

package org.roofspring.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDNamedDestination;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roofspring.calc.Finding;
import org.roofspring.calc.engine.CalculationResult;

/** The PDF of both demonstration sites, opened again and looked at page by page. */
class DemoPdfTest {
    @ParameterizedTest
    @ValueSource(strings = { "hill-school", "household" })
    void noTextLeavesThePage(String site) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(DemoReport.of(site).pdf())) {
            PageLetters letters = new PageLetters();
            String text = letters.getText(pdf);
            assertEquals(List.of(), letters.outside());
            assertTrue(letters.count() > 10_000, "letters: " + letters.count());
            assertTrue(text.contains(DemoReport.of(site).document().title()));
            assertTrue(pdf.getNumberOfPages() > 10 && pdf.getNumberOfPages() < 150, "pages: " + pdf.getNumberOfPages());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = { "hill-school", "household" })
    void everyFontIsEmbeddedAndSubset(String site) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(DemoReport.of(site).pdf())) {
            Set<String> names = new HashSet<>();
            for (PDPage page : pdf.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    names.add(font.getName());
                }
            }
            assertEquals(2, names.size(), names.toString());
            names.forEach(name -> assertTrue(name.matches("[A-Z]{6}\\+DejaVuSansCondensed.*"), name));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = { "hill-school", "household" })
    void everyFindingCanBeFoundByItsId(String site) throws IOException {
        DemoReport demo = DemoReport.of(site);
        try (PDDocument pdf = Loader.loadPDF(demo.pdf())) {
            var names = new PDDocumentNameDictionary(pdf.getDocumentCatalog()).getDests().getNames();
            for (CalculationResult result : demo.results().results()) {
                if (result.completed().isPresent()) {
                    for (Finding finding : result.completed().get().findings()) {
                        String id = DesignReport.idOf(result.descriptor().id(), finding);
                        assertNotNull(names.get(id), id);
                        assertTrue(names.get(id).retrievePageNumber() >= 0, id);
                    }
                }
            }
            for (PDPage page : pdf.getPages()) {
                for (PDAnnotation annotation : page.getAnnotations()) {
                    PDActionGoTo action = (PDActionGoTo) ((PDAnnotationLink) annotation).getAction();
                    String target = ((PDNamedDestination) action.getDestination()).getNamedDestination();
                    assertNotNull(names.get(target), target);
                    assertTrue(annotation.getRectangle().getLowerLeftX() > 0
                            && annotation.getRectangle().getUpperRightX() < page.getMediaBox().getWidth());
                }
            }
            assertTrue(StreamSupport.stream(pdf.getDocumentCatalog().getDocumentOutline().children().spliterator(),
                    false).count() >= 10);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = { "hill-school", "household" })
    void eachCardIsOnOnePageAlone(String site) throws IOException {
        DemoReport demo = DemoReport.of(site);
        List<Block.Card> cards = demo.document().blocks().stream()
                .filter(Block.Card.class::isInstance).map(Block.Card.class::cast).toList();
        assertFalse(cards.isEmpty());
        try (PDDocument pdf = Loader.loadPDF(demo.pdf())) {
            var names = new PDDocumentNameDictionary(pdf.getDocumentCatalog()).getDests().getNames();
            Set<Integer> pages = new HashSet<>();
            for (Block.Card card : cards) {
                Block.Table table = (Block.Table) card.blocks().get(0);
                int page = names.get(table.id()).retrievePageNumber();
                assertTrue(pages.add(page), "two cards on page " + page);
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page + 1);
                stripper.setEndPage(page + 1);
                String text = words(stripper.getText(pdf));
                assertTrue(text.contains(words(card.title())), card.title());
                Block.Cell last = table.shownRows().get(table.shownRows().size() - 1).get(0);
                assertTrue(text.contains(words(last.text())), last.text());
                assertTrue(text.contains(words("Follow the local authority")), "the card goes on beyond its page");
            }
        }
    }

    /** Without white space, which depends on where lines are broken. */
    private static String words(String text) {
        return text.codePoints().filter(c -> !Character.isWhitespace(c) && !Character.isSpaceChar(c))
                .mapToObj(Character::toString).collect(Collectors.joining());
    }

    @Test
    void sameInputSameBytesButForTheDate() {
        DemoReport demo = DemoReport.of("household");
        ReportDocument again = DesignReport.build(demo.snapshot(), demo.results(), DemoReport.settings());
        assertArrayEquals(demo.pdf(), PdfReport.write(again));
        assertEquals(demo.html(), HtmlReport.write(again));
        ReportSettings tomorrow = new ReportSettings(LocalDate.of(2026, 2, 1), DemoReport.settings().units(), "0.1.0");
        String other = HtmlReport.write(DesignReport.build(demo.snapshot(), demo.results(), tomorrow));
        assertEquals(demo.html(), other.replace("2026-02-01", "2026-01-31"));
        assertFalse(demo.html().equals(other));
    }
}

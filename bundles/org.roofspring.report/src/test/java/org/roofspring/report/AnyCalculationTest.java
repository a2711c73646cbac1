package org.roofspring.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentNameDictionary;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working;
import org.roofspring.calc.engine.CalculationDescriptor;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.CalculationResult.Status;
import org.roofspring.calc.engine.PluginFault;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.Tank;
import org.roofspring.site.snapshot.SiteSnapshot;

/** A calculation that this program has never heard of, with every kind of finding and with texts that mean harm. */
class AnyCalculationTest {
    private static final String ID = "com.example.odd";
    private static final String HARM = "<script>alert('x')</script> & \"quoted\" \u6c34 \u0007 \ud83d\udca7";
    private static final String LONG = "Llanfairpwllgwyngyllgogerychwyrndrobwllllantysiliogogogoch".repeat(6);

    private static SiteSnapshot snapshot() {
        Site site = SiteFactory.eINSTANCE.createSite();
        site.setId("site");
        site.setName(HARM);
        for (String name : List.of("One", "Two")) {
            Tank tank = SiteFactory.eINSTANCE.createTank();
            tank.setId("tank-" + name.toLowerCase(java.util.Locale.ROOT));
            tank.setName(name);
            tank.setCapacity(Quantity.of(5, Units.M3));
            site.getTanks().add(tank);
        }
        return SiteSnapshot.of(site, 1, null);
    }

    private static List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        findings.add(new Finding("number", "A number", new FindingValue.Number(Quantity.of(1.25, Units.M3))));
        findings.add(new Finding("flag", "A flag", new FindingValue.Flag(true)));
        findings.add(new Finding("text", "A text", new FindingValue.Text(HARM)));
        findings.add(new Finding("long", "A long text", new FindingValue.Text(LONG)));
        findings.add(new Finding("verdict", "A verdict", new FindingValue.Verdict(FindingValue.Verdict.Level.BAD,
                "no", List.of(HARM, LONG))));
        findings.add(new Finding("daily", "A series", new FindingValue.Daily(LocalDate.of(2000, 1, 1),
                new double[] { 1, Double.NaN, 3, Double.POSITIVE_INFINITY }, Units.M3)));
        findings.add(new Finding("curve", "A curve", new FindingValue.Curve("x", Units.M, new double[] { 0, 1, 2 },
                Units.M3,
                new double[] { -1e300, 5, Double.NaN })));
        findings.add(new Finding("empty", "An empty series", new FindingValue.Daily(LocalDate.of(2000, 1, 1),
                new double[0], Units.MM)));
        findings.add(new Finding("table", "A table", new FindingValue.Table(List.of("Name", "Value", "Holds"),
                List.of(Arrays.asList(HARM, Quantity.of(3, Units.L), true), Arrays.asList(LONG, null, null)))));
        findings.add(new Finding("noRows", "A table without rows", new FindingValue.Table(List.of("Name"), List.of())));
        findings.add(wide());
        findings.add(new Finding("tall", "A tall row", new FindingValue.Table(List.of("Name", "Text"),
                List.of(List.of("row", "word ".repeat(6000))))));
        findings.add(new Finding("rows", "Many rows", new FindingValue.Table(List.of("Row"),
                Collections.nCopies(500, List.of((Object) "a row")))));
        for (String element : List.of("tank-one", "tank-two", "nowhere")) {
            findings.add(new Finding("number", "A number", element, new FindingValue.Number(Quantity.of(7,
                    Units.L_PER_S))));
            findings.add(new Finding("other", "Another", element, new FindingValue.Flag(false)));
        }
        return findings;
    }

    private static Finding wide() {
        List<String> columns = new ArrayList<>();
        List<Object> row = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            columns.add("Column number " + i);
            row.add("cell " + i);
        }
        return new Finding("wide", "A wide table", new FindingValue.Table(columns, Collections.nCopies(20, row)));
    }

    private static SiteResults results() {
        Working working = new Working("number", "A number", Working.Step.of("V", "a volume", "a b", Quantity.of(1.25,
                Units.M3),
                Source.fromMemory("A book"), new Working.Input("a", "first", Quantity.of(2))));
        Caution caution = new Caution("odd.danger", Caution.Severity.DANGER, "tank-one", "{0} " + LONG,
                List.of(HARM), "Ask someone.",
                Source.published("A source"));
        Outcome outcome = new Outcome.Completed(findings(), List.of(working), List.of(caution));
        Map<String, CalculationResult> byId = new java.util.LinkedHashMap<>();
        byId.put(ID, new CalculationResult(descriptor(ID), Status.COMPLETED, outcome, List.of(), null, "f", 1));
        byId.put("com.example.none", new CalculationResult(descriptor("com.example.none"), Status.NOT_APPLICABLE, null,
                List.of("There is no pond."), null, "f", 1));
        byId.put("com.example.broken", new CalculationResult(descriptor("com.example.broken"), Status.FAULT, null,
                List.of("It fell over."), new PluginFault("com.example.broken", "com.example", "It fell over.",
                        null), "", 1));
        return new SiteResults(1, byId, List.of(new PluginFault("com.example.loop", "com.example",
                "It needs itself.", null)));
    }

    private static CalculationDescriptor descriptor(String id) {
        return new CalculationDescriptor(id, "3", "Odd " + id, List.of("*"), List.of(), List.of(), 60, "com.example");
    }

    private static ReportDocument report() {
        return DesignReport.build(snapshot(), results(), DemoReport.settings());
    }

    @Test
    void everythingIsInTheHtmlAndNothingIsLetThrough() {
        String html = HtmlReport.write(report());
        Parser parser = Parser.htmlParser().setTrackErrors(20);
        parser.parseInput(html, "");
        assertEquals(List.of(), parser.getErrors());
        Document page = Jsoup.parse(html);
        assertEquals(0, page.select("script").size());
        findings().forEach(finding -> assertNotNull(page.getElementById(DesignReport.idOf(ID, finding)), finding.id()));
        assertTrue(page.text().contains("There is no pond.") && page.text().contains("It fell over.")
                && page.text().contains("It needs itself."));
        assertTrue(page.getElementById(ID + "/text").text().contains("\u6c34"),
                "HTML keeps what the font of the PDF lacks");
        assertTrue(page.getElementById(ID + "/rows").nextElementSibling() == null,
                "tables stand in boxes of their own");
        assertTrue(page.text().contains("485 more rows are in the file of this table."));
        assertTrue(page.text().contains("1.25\u00a0m\u00b3") || page.text().contains("1.25 m\u00b3"));
    }

    @Test
    void everythingIsInThePdf() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(PdfReport.write(report()))) {
            var names = new PDDocumentNameDictionary(pdf.getDocumentCatalog()).getDests().getNames();
            findings().forEach(finding -> assertTrue(names.containsKey(DesignReport.idOf(ID, finding)), finding.id()));
            PageLetters letters = new PageLetters();
            String text = letters.getText(pdf);
            assertEquals(List.of(), letters.outside(), "thirty columns and words without end stay on the page");
            assertTrue(text.contains("alert('x')"));
            assertTrue(text.contains("\ufffd"), "what the font lacks is shown as missing");
            assertEquals(6000, text.split("\\bword\\b", -1).length - 1,
                    "a row that is taller than a page is not cut short");
        }
    }

    /** For the test below. */
    public static void main(String[] arguments) throws IOException {
        Files.write(Path.of(arguments[0]), PdfReport.write(report()));
        Files.writeString(Path.of(arguments[1]), HtmlReport.write(report()));
    }

    /** Hash codes of enumerations and the clock differ from run to run; the report does not. */
    @Test
    void anotherRunWritesTheSameBytes(@TempDir Path folder) throws IOException, InterruptedException {
        Path pdf = folder.resolve("other.pdf");
        Path html = folder.resolve("other.html");
        Process other = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), AnyCalculationTest.class.getName(), pdf.toString(),
                        html.toString())
                .redirectErrorStream(true).redirectOutput(folder.resolve("log").toFile()).start();
        assertEquals(0, other.waitFor(), () -> read(folder.resolve("log")));
        assertEquals(HtmlReport.write(report()), Files.readString(html));
        assertArrayEquals(PdfReport.write(report()), Files.readAllBytes(pdf));
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void anEmptySiteHasAReportToo() throws IOException {
        Site site = SiteFactory.eINSTANCE.createSite();
        ReportDocument report = DesignReport.build(SiteSnapshot.of(site, 1, null), SiteResults.none(),
                DemoReport.settings());
        assertEquals("Rainwater system", report.title());
        assertTrue(HtmlReport.write(report).contains("The site has no parts yet."));
        try (PDDocument pdf = Loader.loadPDF(PdfReport.write(report))) {
            assertTrue(pdf.getNumberOfPages() >= 2);
        }
    }

    @Test
    void valuesOfTheReportsOwnTables() {
        Map<String, String> files = CsvReport.write(DemoReport.of("household").document());
        assertTrue(files.get("Site.roofs").startsWith("Name,"), files.get("Site.roofs"));
        assertTrue(files.containsKey("bill-of-quantities") && files.containsKey("sources"));
        files.values().forEach(text -> assertFalse(text.contains("\u202f") || text.contains("\u2212"), text));
    }

    @Test
    void refusesWhatIsNoReport() {
        List<Block> twice = List.of(new Block.Heading(1, "a", "same"), new Block.Heading(1, "b", "same"));
        assertThrows(IllegalArgumentException.class, () -> new ReportDocument("t", "", DemoReport.DAY, twice));
        assertThrows(IllegalArgumentException.class, () -> new Block.Heading(5, "a", ""));
        assertThrows(IllegalArgumentException.class, () -> new Block.Table("", "", List.of(new Block.Column("a",
                false)), List.of(List.of()), 1, "", ""));
        assertThrows(IllegalArgumentException.class, () -> new Block.Card("a", List.of(new Block.PageBreak())));
    }
}

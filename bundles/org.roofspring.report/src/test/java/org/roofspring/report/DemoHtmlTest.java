package org.roofspring.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roofspring.calc.Finding;
import org.roofspring.calc.Working;
import org.roofspring.calc.engine.CalculationResult;

import nu.validator.client.EmbeddedValidator;

/** The HTML of both demonstration sites, read by a parser that is not ours. */
class DemoHtmlTest {
    @ParameterizedTest
    @ValueSource(strings = { "hill-school", "household" })
    void isParsedWithoutAnError(String site) {
        Parser parser = Parser.htmlParser().setTrackErrors(50);
        parser.parseInput(DemoReport.of(site).html(), "");
        assertEquals(List.of(), parser.getErrors());
        Document page = Jsoup.parse(DemoReport.of(site).html());
        assertEquals("en", page.selectFirst("html").attr("lang"));
        assertEquals(1, page.select("h1").size());
        assertEquals("utf-8", page.selectFirst("meta[charset]").attr("charset"));
    }

    /** The checker of HTML, CSS and SVG that the people who write the standard use. */
    @ParameterizedTest
    @ValueSource(strings = { "hill-school", "household" })
    void isValid(String site, @TempDir Path folder) throws Exception {
        EmbeddedValidator validator = new EmbeddedValidator();
        validator.setOutputFormat(EmbeddedValidator.OutputFormat.JSON);
        String said = validator.validate(Files.writeString(folder.resolve("report.html"), DemoReport.of(site).html()));
        assertTrue(said.startsWith("{\"messages\":[]"), () -> said.substring(0, Math.min(1000, said.length())));
    }

    @ParameterizedTest
    @ValueSource(strings = { "hill-school", "household" })
    void everyFindingAndEveryWorkingIsThereOnce(String site) {
        DemoReport demo = DemoReport.of(site);
        List<String> ids = Jsoup.parse(demo.html()).select("[id]").eachAttr("id");
        Set<String> distinct = new HashSet<>(ids);
        assertEquals(ids.size(), distinct.size(), "an id stands twice");
        List<String> missing = new ArrayList<>();
        int findings = 0;
        for (CalculationResult result : demo.results().results()) {
            if (result.completed().isPresent()) {
                for (Finding finding : result.completed().get().findings()) {
                    findings++;
                    String id = DesignReport.idOf(result.descriptor().id(), finding);
                    if (!distinct.contains(id)) {
                        missing.add(id);
                    }
                }
                for (Working working : result.completed().get().workings()) {
                    String id = "working/" + result.descriptor().id() + "/" + working.findingId()
                            + (working.elementId() == null ? "" : "@" + working.elementId());
                    if (!distinct.contains(id)) {
                        missing.add(id);
                    }
                }
            }
        }
        assertEquals(List.of(), missing);
        assertTrue(findings > 100, "findings: " + findings);
    }

    @ParameterizedTest
    @ValueSource(strings = { "hill-school", "household" })
    void asksForNothingOutsideItself(String site) {
        Document page = Jsoup.parse(DemoReport.of(site).html());
        String fetching = "script, link, iframe, object, embed, img, image, base, form, audio, video, source";
        assertEquals(0, page.select(fetching).size());
        for (Element element : page.getAllElements()) {
            element.attributes().forEach(attribute -> {
                assertFalse(attribute.getKey().startsWith("on") || attribute.getKey().equals("src")
                        || attribute.getKey().equals("style"),
                        attribute.toString());
                if (attribute.getKey().endsWith("href")) {
                    assertTrue(attribute.getValue().startsWith("#"), attribute.toString());
                }
            });
        }
        String style = page.select("style").html();
        assertFalse(style.contains("url(") || style.contains("@import") || style.contains("http"),
                "the style sheet fetches something");
    }

    @ParameterizedTest
    @ValueSource(strings = { "hill-school", "household" })
    void everyLinkLeadsSomewhere(String site) {
        Document page = Jsoup.parse(DemoReport.of(site).html());
        Set<String> ids = new HashSet<>(page.select("[id]").eachAttr("id"));
        List<Element> links = page.select("a[href]");
        for (Element link : links) {
            String target = URLDecoder.decode(link.attr("href").substring(1), StandardCharsets.UTF_8);
            assertTrue(ids.contains(target), link.outerHtml());
        }
        assertTrue(links.size() > 50, "links: " + links.size());
    }

    @ParameterizedTest
    @ValueSource(strings = { "hill-school", "household" })
    void everyFindingWithAWorkingLeadsToIt(String site) {
        DemoReport demo = DemoReport.of(site);
        Document page = Jsoup.parse(demo.html());
        Set<String> targets = new HashSet<>(page.select("a[href^=#working/]").eachAttr("href"));
        page.select("section.working[id]").forEach(working -> {
            String finding = working.id().substring("working/".length());
            if (page.getElementById(finding) != null) {
                assertTrue(targets.stream().anyMatch(t -> URLDecoder.decode(t, StandardCharsets.UTF_8).equals("#"
                        + working.id())),
                        "nothing leads to the working of " + finding);
            }
        });
    }

    @ParameterizedTest
    @ValueSource(strings = { "hill-school", "household" })
    void saysWhatItMustSay(String site) {
        DemoReport demo = DemoReport.of(site);
        Document page = Jsoup.parse(demo.html());
        for (String chapter : List.of("summary", "cautions", "answers", "review", "bill", "inputs", "assumptions",
                "not-checked", "versions",
                "signatures", "workings")) {
            assertNotNull(page.getElementById(chapter), chapter);
        }
        assertTrue(page.text().contains("must be reviewed by people who are licensed"));
        assertTrue(page.text().contains(demo.snapshot().fingerprint(demo.snapshot().site())));
        assertTrue(page.text().contains("Simple rules beside the simulation")
                && page.text().contains("Why it differs"));
        assertTrue(page.text().contains("What larger gutters would add"));
        assertTrue(page.select("figure svg").size() >= 5, "drawings: " + page.select("figure svg").size());
        assertTrue(page.select("section.card").size() >= 1);
        assertTrue(page.text().contains(DemoReport.DAY.toString()));
        demo.results().results().stream()
                .filter(result -> result.completed().isEmpty()).forEach(result -> result.reasons()
                .forEach(reason -> assertTrue(page.getElementById("table/not-checked").text().contains(reason),
                        reason)));
    }
}

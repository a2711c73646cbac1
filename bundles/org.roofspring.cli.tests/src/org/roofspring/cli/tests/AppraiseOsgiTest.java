package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.FrameworkUtil;
import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.cli.tests.Asked.Answer;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

/** Whole sites, with the calculations that the framework brings. */
class AppraiseOsgiTest {
    private static CalculationRegistry registry;

    @TempDir
    Path folder;

    @BeforeAll
    static void takeTheRegistryOfTheFramework() throws BundleException {
        BundleContext context = FrameworkUtil.getBundle(AppraiseOsgiTest.class).getBundleContext();
        for (Bundle bundle : context.getBundles()) {
            String name = bundle.getSymbolicName();
            if (name.equals("org.roofspring.calc.engine") || name.equals("org.roofspring.calc.standard")) {
                bundle.start();
            }
        }
        var reference = context.getServiceReference(CalculationRegistry.class);
        assertNotNull(reference, "the registry is not a service");
        registry = context.getService(reference);
    }

    private static Asked asked(String command) {
        return Asked.of(registry, command);
    }

    @ParameterizedTest
    @ValueSource(strings = {"hill-school", "household"})
    void everythingThatAppliesIsComputed(String site) {
        Answer answer = Asked.answer(registry, "appraise " + DemoData.site(site));
        assertEquals("appraise", answer.json().get("calculation").getAsString());
        assertTrue(answer.json().getAsJsonArray("faults").isEmpty(), "no calculation fails");
        assertTrue(answer.json().getAsJsonArray("calculations").size() >= 3);
        for (JsonElement element : answer.json().getAsJsonArray("calculations")) {
            JsonObject calculation = element.getAsJsonObject();
            boolean completed = calculation.get("status").getAsString().equals("completed");
            assertEquals(completed, calculation.has("figures"), calculation.get("calculation").getAsString());
            assertTrue(completed || !calculation.getAsJsonArray("reasons").isEmpty(), "says why there is no answer");
        }
        assertEquals(14_610, answer.number("rain.record/days"));
        assertTrue(answer.number("storage.balance/supplied", "m3") > 0);
        assertFalse(answer.cautionCodes().isEmpty());
    }

    @Test
    void theAnswerComesFirst() {
        Asked school = asked("appraise " + DemoData.site("hill-school"));
        assertEquals(0, school.status());
        assertEquals("", school.err());
        String head = school.out().lines().limit(10).collect(Collectors.joining("\n"));
        for (String words : new String[] {"Talverra Ridge School", "Supply", "days with demand", "Dry spell", "Spilled",
            "Pump", "L/s", "Cautions"}) {
            assertTrue(head.contains(words), words + " in\n" + head);
        }
    }

    @Test
    void resultFilesAreWholeAndNotOverwrittenUnasked() throws IOException {
        Path out = folder.resolve("results/of/school");
        String command = "appraise " + DemoData.site("hill-school") + " --format json,csv --out " + out;
        assertEquals(0, asked(command).status());
        TreeSet<String> names = names(out);
        assertTrue(names.containsAll(List.of("appraisal.json", "findings.csv")), names.toString());
        assertTrue(names.stream().allMatch(name -> name.endsWith(".json") || name.endsWith(".csv")), names.toString());
        assertEquals("appraise", JsonParser.parseString(Files.readString(out.resolve("appraisal.json")))
                .getAsJsonObject().get("calculation").getAsString());
        assertEquals("calculation,finding,element,title,value,unit",
                Files.readAllLines(out.resolve("findings.csv")).get(0));

        Files.writeString(out.resolve("findings.csv"), "mine");
        assertTrue(asked(command).refusal().contains("--force"));
        assertEquals("mine", Files.readString(out.resolve("findings.csv")));
        assertEquals(names, names(out));
        assertEquals(0, asked(command + " --force").status());
        assertTrue(Files.readString(out.resolve("findings.csv")).startsWith("calculation,"));
        assertEquals(names, names(out));
    }

    /** The report comes out of the product as it does out of its module: libraries, fonts and style are inside the bundle. */
    @ParameterizedTest
    @ValueSource(strings = {"hill-school", "household"})
    void theDesignReportIsWrittenAndHoldsEveryFigure(String site) throws IOException {
        Path first = folder.resolve("first");
        String command = "appraise " + DemoData.site(site) + " --format html,pdf,csv --date 2026-01-31 --json --out ";
        Asked asked = asked(command + first);
        assertEquals(0, asked.status(), asked.err());
        String html = Files.readString(first.resolve("report.html"));
        JsonParser.parseString(asked.out()).getAsJsonObject().getAsJsonObject("figures").keySet()
                .forEach(id -> assertTrue(html.contains(" id=\"" + id + "\""), id));
        assertTrue(html.contains("Design report of 2026-01-31"));
        assertFalse(Pattern.compile("(src|href)=\"[^#]").matcher(html).find(), "it asks for something outside itself");
        byte[] pdf = Files.readAllBytes(first.resolve("report.pdf"));
        assertEquals("%PDF-", new String(pdf, 0, 5, StandardCharsets.US_ASCII));
        assertTrue(new String(pdf, pdf.length - 8, 8, StandardCharsets.US_ASCII).contains("%%EOF"));
        assertTrue(names(first).containsAll(List.of("report.bill-of-quantities.csv", "report.Site.roofs.csv")), names(first).toString());
    }

    @Test
    void sameSiteAndDateSameFiles() throws IOException {
        String command = "appraise " + DemoData.site("household") + " --format html,pdf,csv --date 2026-01-31 --out ";
        Path first = folder.resolve("first");
        Path second = folder.resolve("second");
        assertEquals(0, asked(command + first).status());
        assertEquals(0, asked(command + second).status());
        for (String name : names(first)) {
            assertArrayEquals(Files.readAllBytes(first.resolve(name)), Files.readAllBytes(second.resolve(name)), name);
        }
        assertTrue(asked(command + first).refusal().contains("--force"));
    }

    private static TreeSet<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    @Test
    void sitesThatAreNone() throws IOException {
        byte[] picture = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0, 0, 0, 13, 'I', 'H', 'D', 'R', 0, 0};
        refused(Files.write(folder.resolve("picture.site"), picture), "picture.site");
        refused(Files.writeString(folder.resolve("empty.site"), ""), "empty.site");
        String whole = Files.readString(DemoData.site("hill-school"));
        refused(Files.writeString(folder.resolve("half.site"), whole.substring(0, whole.length() / 2)), "half.site");
        refused(folder.resolve("none.site"), "none.site");
        refused(folder, "folder");
    }

    private void refused(Path site, String said) throws IOException {
        Path out = folder.resolve("out");
        String line = asked("appraise " + site + " --out " + out).refusal();
        assertTrue(line.contains(said), line);
        assertFalse(Files.exists(out), "nothing is written");
    }

    @ParameterizedTest
    @CsvSource({"--format docx,--format", "--date tomorrow,--date", "--force yes,\"yes\"", "--outfile x,--outfile"})
    void wrongOptions(String options, String said) {
        Path out = folder.resolve("out");
        String line = asked("appraise " + DemoData.site("household") + " --out " + out + " " + options).refusal();
        assertTrue(line.contains(said), line);
    }

    @Test
    void outMustBeAFolder() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "mine");
        String line = asked("appraise " + DemoData.site("household") + " --out " + file).refusal();
        assertTrue(line.contains("a folder is needed"), line);
        assertEquals("mine", Files.readString(file));
    }

    /** The launcher finds the application that runs the command line. */
    @Test
    void theApplicationIsRegistered() {
        assertNotNull(Platform.getExtensionRegistry()
                .getExtension("org.eclipse.core.runtime.applications", "org.roofspring.cli.application"));
    }
}

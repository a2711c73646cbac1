package org.roofspring.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The table of what bears on health or injury and the code say the same. */
class HealthAndSafetyTableTest {
    private static final Path ROOT = Path.of("../..").toAbsolutePath().normalize();
    private static final Set<String> SURENESS = Set.of("read", "memory", "practice", "assumed", "derived");
    /** Where a DANGER is made: the code before the severity, which may end in a part that is put in when it runs. */
    private static final Pattern MADE = Pattern.compile(
            "\"([a-z]+[a-z.-]*)\"( \\+ \\w+)?,\\s*(?:Caution\\.)?Severity\\.DANGER"
                    + "|(?:Caution\\.danger|KernelTerms\\.unsuitable)\\(\\s*\"([a-z.-]+)\"");
    private static final Pattern NAMED = Pattern.compile("Severity\\.DANGER|Caution\\.danger\\(");
    /** Where a severity is only asked for or handed on. */
    private static final Set<String> NOT_MADE_IN = Set.of("Caution", "KernelTerms", "AppraisalText", "Judge");

    private static final Map<String, String> SOURCES = new TreeMap<>();
    private static String all;
    private static String page;

    @BeforeAll
    static void readCode() throws IOException {
        page = Files.readString(ROOT.resolve("docs/health-and-safety.md"));
        try (Stream<Path> files = Files.walk(ROOT.resolve("bundles"))) {
            for (Path file : files.filter(HealthAndSafetyTableTest::isMain).toList()) {
                SOURCES.put(ROOT.relativize(file).toString(), Files.readString(file));
            }
        }
        all = String.join("\n", SOURCES.values());
    }

    private static boolean isMain(Path file) {
        String path = ROOT.relativize(file).toString().replace('\\', '/');
        return path.endsWith(".java") && path.contains("/src/") && !path.contains("/src/test/")
                && !path.contains(".tests/") && !path.contains("roofspring.ui") && !path.contains(".testkit/");
    }

    private static List<List<String>> rows(String heading) {
        int begin = page.indexOf("\n## " + heading + "\n");
        assertTrue(begin >= 0, "the page has no part " + heading);
        int end = page.indexOf("\n## ", begin + 1);
        return page.substring(begin, end < 0 ? page.length() : end).lines().filter(line -> line.startsWith("| `"))
                .map(line -> Stream.of(line.substring(1, line.lastIndexOf('|')).split("\\|")).map(String::strip)
                        .toList())
                .toList();
    }

    private static Set<String> first(List<List<String>> rows) {
        return rows.stream().map(row -> row.getFirst().replace("`", "")).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyRowSaysWhereItComesFromAndHowSureThatIs() {
        for (String heading : List.of("Cautions", "Verdicts", "Defaults")) {
            List<List<String>> rows = rows(heading);
            assertTrue(rows.size() >= 4, heading);
            assertEquals(rows.size(), first(rows).size(), heading + " has a row twice");
            for (List<String> row : rows) {
                assertTrue(SURENESS.contains(row.getLast()), () -> row + " does not say how sure it is");
                assertTrue(row.stream().noneMatch(String::isEmpty), () -> row + " has an empty cell");
            }
        }
    }

    @Test
    void everyDangerOfTheCodeIsInTheTableAndTheOtherWayRound() {
        assertEquals(first(rows("Cautions")), dangers());
    }

    private static Set<String> dangers() {
        Set<String> codes = new TreeSet<>();
        SOURCES.forEach((path, code) -> {
            String name = path.replaceAll(".*[/\\\\]|\\.java", "");
            int made = 0;
            Matcher matcher = MADE.matcher(code);
            while (matcher.find()) {
                made++;
                String found = matcher.group(1) == null ? matcher.group(3) : matcher.group(1);
                codes.addAll(matcher.group(2) == null ? List.of(found) : completed(found, code));
            }
            long named = NAMED.matcher(code).results().count() + (code.contains("KernelTerms.unsuitable(") ? 1 : 0);
            int found = made;
            assertTrue(made >= named || NOT_MADE_IN.contains(name), () -> path + " names DANGER " + named
                    + " times, and only " + found + " codes were understood");
        });
        codes.addAll(hazards());
        return codes;
    }

    /** Codes that end in the name of a neighbour of the tank. */
    private static List<String> completed(String begin, String code) {
        return Pattern.compile("neighbour\\(\"([a-z-]+)\"").matcher(code).results()
                .map(neighbour -> begin + neighbour.group(1)).toList();
    }

    /** Hazards that keep water from being drunk while no test clears them; copper does so in acid water. */
    private static Set<String> hazards() {
        String code = SOURCES.entrySet().stream().filter(entry -> entry.getKey().endsWith("Hazard.java")
                && entry.getKey().contains("treatment")).findFirst().orElseThrow().getValue();
        return Pattern.compile("^ {4}([A-Z_]+)\\(\"[^\"]*\", Effect\\.(\\w+)", Pattern.MULTILINE).matcher(code)
                .results()
                .filter(hazard -> hazard.group(2).equals("BLOCKS") || hazard.group(1).equals("COPPER"))
                .map(hazard -> "hazard." + hazard.group(1).toLowerCase(Locale.ROOT)).collect(Collectors.toSet());
    }

    @Test
    void everyDefaultIsInTheCodeWithItsValue() {
        for (List<String> row : rows("Defaults")) {
            String[] name = row.get(0).replace("`", "").split("\\.");
            String value = row.get(1).replace("`", "");
            Pattern declared = Pattern.compile("static final \\w+ " + name[1] + " = " + Pattern.quote(value)
                    + "[;,)\\s]");
            assertTrue(SOURCES.entrySet().stream().anyMatch(entry -> entry.getKey().endsWith(name[0] + ".java")
                    && declared.matcher(entry.getValue()).find()),
                    () -> row.get(0) + " is not " + value + " in the code");
        }
    }

    @Test
    void everyDefaultOfTreatmentAndSitingIsInTheTable() {
        Set<String> listed = first(rows("Defaults"));
        List<String> missing = new ArrayList<>();
        Pattern declared = Pattern.compile(
                "public static final (?!Source)\\w+ (DEFAULT\\w*|MAX_TURBIDITY\\w*|MAX_CHLORINE\\w*) =");
        SOURCES.forEach((path, code) -> {
            if (path.replace('\\', '/').matches(".*/(treatment|drainage/siting|drainage/tank)/.*")
                    && path.contains("src/main")) {
                declared.matcher(code).results().map(found -> path.replaceAll(".*[/\\\\]|\\.java", "") + "."
                        + found.group(1)).filter(name -> !listed.contains(name)).forEach(missing::add);
            }
        });
        assertEquals(List.of(), missing, "defaults that docs/health-and-safety.md does not list");
    }

    @Test
    void everyVerdictIsAFindingAndDecidedByAClassThereIs() {
        for (List<String> row : rows("Verdicts")) {
            String finding = row.get(0).replace('`', '"');
            assertTrue(all.contains("(" + finding + ","), () -> row.get(0) + " is no finding");
            String decider = row.get(2).replace("`", "") + ".java";
            assertTrue(SOURCES.keySet().stream().anyMatch(path -> path.endsWith(decider)), decider);
        }
    }
}

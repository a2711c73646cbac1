package org.roofspring.report.internal.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.PluginFault;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.report.Block;
import org.roofspring.report.Block.Cell;
import org.roofspring.site.Gutter;

/** What follows from the results as a whole: summary, cautions, sources, what was not checked, workings. */
final class ResultSections {
    /** Answers that people ask for first, where there are any; each is a calculation and a finding of the site. */
    private static final List<String[]> HEADLINES = List.of(new String[] { "rain.record", "annualMean" },
            new String[] { "rain.record", "driestYear" }, new String[] { "storage.balance", "timeReliability" },
            new String[] { "storage.balance", "volumetricReliability" }, new String[] { "storage.balance",
                    "longestShortage" },
            new String[] { "storage.sizing", "presentVolume" }, new String[] { "storage.sizing", "requiredVolume" },
            new String[] { "storage.outlook", "volumeToday" }, new String[] { "storage.outlook", "daysLeftCautious" },
            new String[] { "storage.outlook", "chanceDry" });

    private static final List<Source.Standing> CITED = List.of(Source.Standing.PUBLISHED, Source.Standing.FROM_MEMORY,
            Source.Standing.COMMON_PRACTICE, Source.Standing.INVENTED);

    private final SiteResults results;
    private final Words words;

    ResultSections(SiteResults results, Words words) {
        this.results = results;
        this.words = words;
    }

    /** The answers in a few lines: first figures, then judgements, the worst first. */
    List<Block> summary() {
        List<Block> blocks = new ArrayList<>();
        List<Block.Entry> entries = new ArrayList<>();
        for (String[] headline : HEADLINES) {
            results.finding(headline[0], headline[1]).ifPresent(finding -> entries.add(new Block.Entry(finding.title(),
                    new Cell(share(finding.value()), "", Keys.finding(headline[0], finding)))));
        }
        if (!entries.isEmpty()) {
            blocks.add(new Block.KeyValues(entries));
        }
        blocks.addAll(judgements());
        return blocks;
    }

    /** A share reads better as a percentage, which a finding may or may not be given in. */
    private String share(FindingValue value) {
        return value instanceof FindingValue.Number number && number.quantity().unit() == Units.ONE
                ? words.of(number.quantity().as(Units.PERCENT)) : words.of(value);
    }

    private List<Block> judgements() {
        Map<FindingValue.Verdict.Level, List<List<Cell>>> byLevel = new LinkedHashMap<>();
        for (FindingValue.Verdict.Level level : List.of(FindingValue.Verdict.Level.BAD,
                FindingValue.Verdict.Level.CONDITIONAL,
                FindingValue.Verdict.Level.GOOD)) {
            byLevel.put(level, new ArrayList<>());
        }
        for (CalculationResult result : results.results()) {
            result.completed().ifPresent(outcome -> outcome.findings().forEach(finding -> {
                if (finding.value() instanceof FindingValue.Verdict verdict) {
                    String about = words.name(finding.elementId());
                    String question = about.isEmpty() || finding.title().contains(about) ? finding.title() : about
                            + ": " + finding.title();
                    byLevel.get(verdict.level()).add(List.of(new Cell(Words.tone(verdict.level()).word()),
                            new Cell(question),
                            new Cell(verdict.text(), "", Keys.finding(result.descriptor().id(), finding))));
                }
            }));
        }
        List<List<Cell>> rows = byLevel.values().stream().flatMap(List::stream).toList();
        return rows.isEmpty() ? List.of() : List.of(new Block.Table("", "Judgements, the worst first",
                List.of(new Block.Column("", false), new Block.Column("Question", false), new Block.Column("Answer",
                        false)), rows,
                Integer.MAX_VALUE, "", ""));
    }

    /** All cautions, the gravest first, each once; those that differ only in the element stand together. */
    List<Block> cautions() {
        Map<List<Object>, Map<String, Set<String>>> boxes = new LinkedHashMap<>();
        results.results().stream().flatMap(result -> result.cautions().stream())
                .sorted(Comparator.comparing(Caution::severity).reversed())
                .forEach(caution -> boxes.computeIfAbsent(List.of(caution.severity(), caution.code(), caution.source()),
                        k -> new LinkedHashMap<>()).computeIfAbsent(caution.text(words.format()),
                                k -> new LinkedHashSet<>())
                        .add(words.name(caution.elementId())));
        List<Block> blocks = new ArrayList<>();
        boxes.forEach((kind, texts) -> blocks.add(box((Caution.Severity) kind.get(0), (String) kind.get(1),
                (Source) kind.get(2), texts)));
        return blocks.isEmpty() ? List.of(new Block.Paragraph("No calculation raised a caution.")) : blocks;
    }

    private static Block box(Caution.Severity severity, String code, Source source, Map<String, Set<String>> texts) {
        Block.Tone tone = switch (severity) {
            case INFO -> Block.Tone.INFO;
            case WARNING -> Block.Tone.WARNING;
            case DANGER -> Block.Tone.DANGER;
        };
        if (texts.size() == 1) {
            String text = texts.keySet().iterator().next();
            return new Block.CautionBox(tone, abouts(texts.get(text)), List.of(text), source.toString(), code);
        }
        List<String> named = new ArrayList<>();
        texts.forEach((text, elements) -> {
            String about = abouts(elements);
            named.add(about.isEmpty() || text.contains(about) ? text : about + ": " + text);
        });
        return new Block.CautionBox(tone, "", named, source.toString(), code);
    }

    private static String abouts(Set<String> elements) {
        return String.join(", ", elements.stream().filter(name -> !name.isEmpty()).toList());
    }

    /** How much larger gutters would bring, where the calculation of the way to the tank says so. */
    List<Block> largerGutters() {
        List<List<Object>> rows = new ArrayList<>();
        results.completed("roof.drainage").ifPresent(outcome -> {
            for (Finding gain : outcome.findings()) {
                if (gain.id().equals("largerGutterGain") && words.is(gain.elementId(), Gutter.class)) {
                    rows.add(Arrays.asList(words.name(gain.elementId()), value(outcome, "lostPerYear",
                            gain.elementId()),
                            value(outcome, gain.id(), gain.elementId())));
                }
            }
            if (rows.size() > 1) {
                rows.add(Arrays.asList("All gutters", sum(rows, 1), sum(rows, 2)));
            }
        });
        return rows.isEmpty() ? List.of() : new Tables(words).of("table/larger-gutters",
                "What larger gutters would add in a mean year",
                List.of("Gutter", "Lost over its edge", "Added by the next larger"), rows,
                "Larger by what the working of each gutter says; a share of it is spilled again where tanks are"
                        + " full.", "");
    }

    private static Quantity value(Outcome.Completed outcome, String findingId, String elementId) {
        return outcome.finding(findingId, elementId).map(Finding::value).filter(FindingValue.Number.class::isInstance)
                .map(number -> ((FindingValue.Number) number).quantity()).orElse(null);
    }

    private static Quantity sum(List<List<Object>> rows, int column) {
        double si = rows.stream().map(row -> row.get(column)).filter(Quantity.class::isInstance)
                .mapToDouble(cell -> ((Quantity) cell).si()).sum();
        return Quantity.ofSi(si, Units.L);
    }

    /** Sources of all workings and cautions, by how sure they are; definitions and what the user entered need none. */
    List<Block> sources() {
        Map<Source.Standing, Set<String>> byStanding = new LinkedHashMap<>();
        for (Source.Standing standing : CITED) {
            byStanding.put(standing, new LinkedHashSet<>());
        }
        for (CalculationResult result : results.results()) {
            result.completed().ifPresent(outcome -> outcome.workings().forEach(working -> working.steps()
                    .forEach(step -> cite(step.source(), byStanding))));
            result.cautions().forEach(caution -> cite(caution.source(), byStanding));
        }
        List<List<Object>> rows = new ArrayList<>();
        byStanding.forEach((standing, citations) -> citations.stream().sorted()
                .forEach(citation -> rows.add(List.of(standing.words(), citation))));
        return rows.isEmpty() ? List.of() : List.of(new Block.Table("table/sources",
                "Sources of formulas, values and cautions",
                List.of(new Block.Column("Standing", false), new Block.Column("Source", false)),
                rows.stream().map(row -> row.stream().map(cell -> new Cell(cell.toString())).toList()).toList(),
                        Integer.MAX_VALUE, "", ""));
    }

    private static void cite(Source source, Map<Source.Standing, Set<String>> byStanding) {
        if (byStanding.containsKey(source.standing()) && !source.citation().isBlank()) {
            byStanding.get(source.standing()).add(source.citation());
        }
    }

    /** Calculations without an answer and why, and plug-ins that failed. */
    List<Block> notChecked() {
        List<List<Object>> rows = new ArrayList<>();
        for (CalculationResult result : results.results()) {
            String state = switch (result.status()) {
                case COMPLETED -> "";
                case NO_ANSWER -> "no answer";
                case NOT_APPLICABLE -> "does not apply";
                case FAULT -> "failed";
            };
            if (!state.isEmpty()) {
                rows.add(List.of(result.descriptor().title(), state, String.join(" ", result.reasons())));
            }
        }
        results.faults().forEach((PluginFault fault) -> rows.add(List.of(fault.calculationId(), "could not be run",
                fault.text())));
        List<Block> blocks = new ArrayList<>();
        List<Block> none = List.of(new Block.Paragraph("Every calculation that is installed has given an answer."));
        blocks.addAll(rows.isEmpty() ? none
                : new Tables(words).of("table/not-checked", "Calculations without an answer", List.of("Calculation",
                        "State", "Why"), rows, "", ""));
        blocks.add(new Block.Paragraph("Not part of any calculation: the strength of tanks, stands, roofs and"
                + " foundations, the state of what is built already, the quality of water that nobody has tested, and"
                + " whatever local codes ask for beyond what is named here."));
        return blocks;
    }

    /** The workings, calculation by calculation. */
    List<Block> workings() {
        List<Block> blocks = new ArrayList<>();
        for (CalculationResult result : results.results()) {
            result.completed().filter(outcome -> !outcome.workings().isEmpty()).ifPresent(outcome -> {
                blocks.add(new Block.Heading(2, result.descriptor().title(), "workings/" + result.descriptor().id()));
                Set<String> seen = new LinkedHashSet<>();
                for (Working working : outcome.workings()) {
                    String key = Keys.explained(result.descriptor().id(), working);
                    boolean first = seen.add(key);
                    boolean found = outcome.finding(working.findingId(), working.elementId()).isPresent();
                    String about = words.name(working.elementId());
                    String title = about.isEmpty() || working.title().contains(about) ? working.title() : about
                            + ": " + working.title();
                    blocks.add(new Block.Workings(first ? Keys.working(key) : "", title, found ? key : "",
                            working.steps().stream().map(this::step).toList()));
                }
            });
        }
        return blocks;
    }

    private Block.Step step(Working.Step step) {
        String meaning = step.symbol().isEmpty() ? step.meaning() : step.symbol() + ", " + step.meaning();
        String inputs = step.inputs().stream().map(input -> input.symbol() + ": " + input.meaning() + ", "
                + words.of(input.value()))
                .collect(Collectors.joining("; "));
        return new Block.Step(meaning, step.formula(), inputs, Objects.requireNonNullElse(step.substituted(), ""),
                step.result() == null ? "" : words.of(step.result()), step.source().toString());
    }
}

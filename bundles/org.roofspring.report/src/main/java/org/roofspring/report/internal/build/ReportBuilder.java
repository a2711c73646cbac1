package org.roofspring.report.internal.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.roofspring.calc.Finding;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.report.Block;
import org.roofspring.report.Block.Heading;
import org.roofspring.report.Block.Paragraph;
import org.roofspring.report.ReportDocument;
import org.roofspring.report.ReportSettings;
import org.roofspring.site.Site;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Puts the sections of a report in order. */
public final class ReportBuilder {
    private final SiteSnapshot snapshot;
    private final Site site;
    private final SiteResults results;
    private final ReportSettings settings;
    private final Words words;
    private final List<Block> blocks = new ArrayList<>();

    public ReportBuilder(SiteSnapshot snapshot, SiteResults results, ReportSettings settings) {
        this.snapshot = snapshot;
        this.site = snapshot.site();
        this.results = results;
        this.settings = settings;
        this.words = new Words(snapshot, settings.units());
    }

    /** The id of a finding inside a report. */
    public static String idOf(String calculationId, Finding finding) {
        return Keys.finding(calculationId, finding);
    }

    public ReportDocument build() {
        Map<CalculationResult, Answers> answers = new LinkedHashMap<>();
        results.results().forEach(result -> result.completed().ifPresent(outcome -> answers.put(result,
                new Answers(result.descriptor().id(), outcome))));
        ResultSections sections = new ResultSections(results, words);
        SiteSections inputs = new SiteSections(site, words);
        List<Block> cards = cards(answers);

        chapter("summary", "In short", sections.summary());
        if (site.getNote() != null) {
            blocks.add(new Paragraph(site.getNote()));
        }
        chapter("cautions", "Cautions", sections.cautions());
        answers(answers, sections.largerGutters());
        chapter("review", "Remarks and sign-offs", new ReviewSections(results, words).of(site.getRemarks()));
        if (!cards.isEmpty()) {
            chapter("cards", "Cards to hang beside the tank",
                    List.of(new Paragraph("Each of the next pages is one card.")));
            blocks.addAll(cards);
        }
        chapter("bill", "Bill of quantities", new BillOfQuantities(words).of(site));
        chapter("inputs", "Inputs", inputs.inputs());
        chapter("assumptions", "Assumptions and sources", inputs.defaults());
        blocks.addAll(sections.sources());
        chapter("not-checked", "What was not checked", sections.notChecked());
        chapter("versions", "Versions and input", new VersionSection(snapshot, results, settings, words).blocks());
        blocks.add(new Block.PageBreak());
        chapter("signatures", "Review and signatures", signatures());
        blocks.add(new Block.PageBreak());
        chapter("workings", "Workings", List.of(new Paragraph("The steps behind every figure, with"
                + " values put in and the source of each formula. A figure in the chapters before leads here, and a"
                + " title here leads back.")));
        blocks.addAll(sections.workings());
        return new ReportDocument(title(), subtitle(), settings.date(), blocks);
    }

    private String title() {
        return site.getName() == null || site.getName().isBlank() ? "Rainwater system" : site.getName();
    }

    private String subtitle() {
        return Stream.of(site.getPlace(), site.getClient() == null ? null : "for " + site.getClient(),
                site.getAuthor() == null ? null : "by " + site.getAuthor()).filter(text -> text != null
                        && !text.isBlank())
                .collect(Collectors.joining(", "));
    }

    private void chapter(String id, String title, List<Block> content) {
        blocks.add(new Heading(1, title, id));
        blocks.addAll(content);
    }

    private List<Block> cards(Map<CalculationResult, Answers> answers) {
        List<Block> cards = new ArrayList<>();
        answers.values().forEach(left -> cards.addAll(new Cards(words).of(left, title())));
        return cards;
    }

    private void answers(Map<CalculationResult, Answers> answers, List<Block> largerGutters) {
        chapter("answers", "Answers", List.of(new Paragraph("What each calculation has found. A figure"
                + " that is a link leads to its working in the last chapter.")));
        answers.forEach((result, left) -> {
            blocks.add(new Heading(2, result.descriptor().title(), "answers/" + result.descriptor().id()));
            if (result.descriptor().id().equals("roof.drainage")) {
                blocks.addAll(largerGutters);
            }
            blocks.addAll(new AnswerSections(left, words, snapshot).all());
        });
    }

    private static List<Block> signatures() {
        return List.of(new Paragraph("This report is a calculation, not a permit. Before anything is built or drunk"
                + " from, it must be reviewed by people who are licensed where the system stands: structures, raised"
                + " loads and foundations by a structural engineer, electricity near water by a licensed electrician,"
                + " drinking water by the health authority and a laboratory. Local codes take precedence over every"
                + " figure here."),
                new Block.SignatureSpace(List.of("Designed by", "Reviewed by", "For the owner")));
    }
}

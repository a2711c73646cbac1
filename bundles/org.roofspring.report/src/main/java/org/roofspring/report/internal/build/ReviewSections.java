package org.roofspring.report.internal.build;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.report.Block;
import org.roofspring.site.Remark;

/** What reviewers have said and signed, and whether a sign-off still stands. */
final class ReviewSections {
    private final SiteResults results;
    private final Words words;

    ReviewSections(SiteResults results, Words words) {
        this.results = results;
        this.words = words;
    }

    List<Block> of(List<Remark> remarks) {
        if (remarks.isEmpty()) {
            return List.of(new Block.Paragraph("No remark and no sign-off has been recorded."));
        }
        List<List<Object>> rows = new ArrayList<>();
        remarks.forEach(remark -> add(remark, 0, rows));
        return new Tables(words).of("table/remarks", "Remarks, answers and sign-offs",
                List.of("Date", "About", "Kind", "By", "What is said", "State"), rows,
                        "A sign-off is in force while what it"
                        + " rests on is as it was; a later change of an input puts it out of date.", "");
    }

    private void add(Remark remark, int depth, List<List<Object>> rows) {
        String about = depth > 0 ? "(answer)" : remark.getElement() == null ? "the whole site"
                : words.name(remark.getElement());
        String by = remark.getRole() == null ? words.of(remark.getAuthor()) : remark.getAuthor() + ", "
                + remark.getRole();
        rows.add(List.of(words.of(remark.getDate()), about, words.of(remark.getKind()), by,
                words.of(remark.getText()), state(remark)));
        remark.getReplies().forEach(reply -> add(reply, depth + 1, rows));
    }

    private String state(Remark remark) {
        for (var result : results.results()) {
            var validity = result.completed().flatMap(outcome -> outcome.finding("signOff", remark.getId()));
            if (validity.isPresent()) {
                return verdict(validity.get());
            }
        }
        return remark.isSettled() ? "settled" : "";
    }

    private static String verdict(Finding finding) {
        return finding.value() instanceof FindingValue.Verdict verdict
                ? verdict.text() + (verdict.reasons().isEmpty() ? "" : ": " + String.join("; ", verdict.reasons()))
                        : "";
    }
}

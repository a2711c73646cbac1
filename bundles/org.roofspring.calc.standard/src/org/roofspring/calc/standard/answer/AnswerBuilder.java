package org.roofspring.calc.standard.answer;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Working;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;

/** Collects findings with their workings, all about one element or about the site. Used by one thread. */
public final class AnswerBuilder {
    private final String elementId;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Working> workings = new ArrayList<>();
    private final List<Caution> cautions = new ArrayList<>();

    /** @param elementId the element that the findings are about, or null for the site */
    public AnswerBuilder(String elementId) {
        this.elementId = elementId;
    }

    /** A number and the steps that lead to it. */
    public AnswerBuilder number(String id, String title, Quantity value, Working.Step... steps) {
        add(id, title, new FindingValue.Number(value));
        workings.add(new Working(id, elementId, title, List.of(steps)));
        return this;
    }

    /** A number in the unit it is given in. */
    public AnswerBuilder number(String id, String title, double value, Unit unit, Working.Step... steps) {
        return number(id, title, Quantity.of(value, unit), steps);
    }

    /** A share, shown in per cent. */
    public AnswerBuilder share(String id, String title, double ratio, Working.Step... steps) {
        return number(id, title, Quantity.ofSi(ratio, Units.PERCENT), steps);
    }

    /** A finding that is not a number. */
    public AnswerBuilder add(String id, String title, FindingValue value) {
        findings.add(new Finding(id, title, elementId, value));
        return this;
    }

    /** A finding that is not a number, such as a series, and the steps that lead to it. */
    public AnswerBuilder add(String id, String title, FindingValue value, Working.Step first, Working.Step... more) {
        add(id, title, value);
        List<Working.Step> steps = new ArrayList<>(List.of(first));
        steps.addAll(List.of(more));
        workings.add(new Working(id, elementId, title, steps));
        return this;
    }

    public AnswerBuilder text(String id, String title, String text) {
        return add(id, title, new FindingValue.Text(text));
    }

    public AnswerBuilder flag(String id, String title, boolean value) {
        return add(id, title, new FindingValue.Flag(value));
    }

    public AnswerBuilder caution(Caution caution) {
        cautions.add(caution);
        return this;
    }

    /** Takes over all of another answer, such as that of one tank of several. */
    public AnswerBuilder include(Outcome.Completed other) {
        findings.addAll(other.findings());
        workings.addAll(other.workings());
        cautions.addAll(other.cautions());
        return this;
    }

    public Outcome.Completed build() {
        return new Outcome.Completed(findings, workings, cautions);
    }
}

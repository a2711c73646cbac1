package org.roofspring.calc.standard.answer;

import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Source;

/** The treatment kernel's sources and cautions in the terms that every calculation shares. */
public final class TreatmentTerms {
    /** Who is to be asked before anyone drinks treated roof water. */
    public static final String ASK_HEALTH_AUTHORITY = "Ask your local health authority.";

    private TreatmentTerms() {
    }

    /** The same citation; what was only quoted or assumed keeps saying so. */
    public static Source source(org.roofspring.treatment.Source source) {
        return switch (source.standing()) {
            case READ -> Source.published(source.citation());
            case AS_QUOTED -> Source.published(source.citation() + ", as quoted by others");
            case FROM_MEMORY -> Source.fromMemory(source.citation());
            case COMMON_PRACTICE -> Source.commonPractice(source.citation());
            case ASSUMED -> Source.commonPractice(source.citation() + ", assumed; replace with local knowledge");
            case DERIVED -> Source.definition(source.citation());
        };
    }

    /**
     * The same code, severity and words; a danger also says who is to be asked.
     *
     * @param elementId the element it is about, or null for the site
     */
    public static Caution caution(String elementId, org.roofspring.treatment.Caution caution) {
        Caution.Severity severity = Caution.Severity.valueOf(caution.severity().name());
        return new Caution(caution.code(), severity, elementId, "{0}", List.of(caution.text()),
                severity == Caution.Severity.DANGER ? ASK_HEALTH_AUTHORITY : "",
                Source.definition("rule of the treatment train"));
    }
}

package org.roofspring.calc.standard.answer;

import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Source;
import org.roofspring.drainage.siting.RoofCaution;

/** The kernels' sources and cautions in the terms that every calculation shares. */
public final class KernelTerms {
    private static final String HEALTH_AUTHORITY = "health authority";
    /** Who is to be asked before anyone drinks treated roof water. */
    private static final String ASK_HEALTH_AUTHORITY = "Ask your local " + HEALTH_AUTHORITY + ".";

    private KernelTerms() {
    }

    /** The same citation; what was only quoted or assumed keeps saying so. */
    public static Source source(org.roofspring.treatment.Source source) {
        String citation = source.citation();
        return switch (source.standing()) {
            case READ -> Source.published(citation);
            case AS_QUOTED -> quoted(citation);
            case FROM_MEMORY -> Source.fromMemory(citation);
            case COMMON_PRACTICE -> Source.commonPractice(citation);
            case ASSUMED -> assumed(citation);
            case DERIVED -> Source.definition(citation);
        };
    }

    /** The same citation; what was only quoted or assumed keeps saying so. */
    public static Source source(org.roofspring.drainage.Source source) {
        String citation = source.citation();
        return switch (source.standing()) {
            case READ -> Source.published(citation);
            case AS_QUOTED -> quoted(citation);
            case FROM_MEMORY -> Source.fromMemory(citation);
            case COMMON_PRACTICE -> Source.commonPractice(citation);
            case ASSUMED -> assumed(citation);
            case DERIVED -> Source.definition(citation);
        };
    }

    private static Source quoted(String citation) {
        return Source.published(citation + ", as quoted by others");
    }

    private static Source assumed(String citation) {
        return Source.commonPractice(citation + ", assumed; replace with local knowledge");
    }

    /**
     * The same code, severity and words. A danger that does not say who is to be asked names the health authority.
     *
     * @param elementId the element it is about, or null for the site
     * @param source    why it is so
     */
    public static Caution caution(String elementId, org.roofspring.treatment.Caution caution, Source source) {
        Severity severity = Severity.valueOf(caution.severity().name());
        String text = caution.text();
        if (severity != Severity.DANGER) {
            return plain(caution.code(), severity, elementId, text, "", source);
        }
        int lastSentence = text.lastIndexOf(". ") + 1;
        return lastSentence > 0 && text.indexOf(HEALTH_AUTHORITY, lastSentence) > 0
                ? plain(caution.code(), severity, elementId, text.substring(0, lastSentence),
                        text.substring(lastSentence + 1), source)
                : plain(caution.code(), severity, elementId, text, ASK_HEALTH_AUTHORITY, source);
    }

    /**
     * What is said with any roof, gutter and tank.
     *
     * @param elementId the element it is about, or null for the site
     */
    public static Caution caution(String elementId, RoofCaution caution) {
        return plain(caution.code(), Severity.valueOf(caution.severity().name()), elementId, caution.text(),
                caution.askWhom(), source(caution.source()));
    }

    /**
     * The same, beginning with the name of the part it is about.
     *
     * @param elementId of the part
     */
    public static Caution caution(String elementId, String name, RoofCaution caution) {
        return new Caution(caution.code(), Severity.valueOf(caution.severity().name()), elementId, "{0}: {1}",
                List.of(name, caution.text()), caution.askWhom(), source(caution.source()));
    }

    private static Caution plain(String code, Severity severity, String elementId, String text, String askWhom,
            Source source) {
        return new Caution(code, severity, elementId, "{0}", List.of(text), askWhom, source);
    }

    /** Figures of a treatment say nothing of the water itself. */
    static Caution testTheWater(String elementId) {
        return new Caution("treatment.test-the-water", Severity.DANGER, elementId,
                "These figures do not say that the water is safe: have it tested for E. coli, and again after each "
                        + "change. Infants and people who are ill need more care.", List.of(), ASK_HEALTH_AUTHORITY,
                Source.commonPractice("testing of treated roof water"));
    }

    /** Treatment does not help where the source itself is unfit. */
    static Caution unsuitable(String code, String elementId, String text, Source source) {
        return plain(code, Severity.DANGER, elementId, text, ASK_HEALTH_AUTHORITY, source);
    }
}

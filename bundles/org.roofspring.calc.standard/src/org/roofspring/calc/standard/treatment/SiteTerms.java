package org.roofspring.calc.standard.treatment;

import java.util.Locale;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Source;
import org.roofspring.calc.standard.answer.KernelTerms;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.site.NamedElement;

/** Names, sources and cautions in the words of the site. */
final class SiteTerms {
    /** Begins the citation of every kernel source that stands for a value of the site file. */
    private static final String ENTERED = "entered in this site";

    private SiteTerms() {
    }

    /** A source of the kernel for a value that the user gave. */
    static org.roofspring.treatment.Source entered(String behind) {
        return org.roofspring.treatment.Source.derived(behind == null || behind.isBlank() ? ENTERED
                : ENTERED + ": " + behind);
    }

    /** The shared form of a kernel's source; what the user gave says so. */
    static Source source(org.roofspring.treatment.Source source) {
        return source.citation().startsWith(ENTERED)
                ? new Source(Source.Standing.USER, source.citation().replaceFirst("^" + ENTERED + "(: )?", ""))
                : KernelTerms.source(source);
    }

    /** A value of the site file. */
    static Source user(String what) {
        return new Source(Source.Standing.USER, what);
    }

    /** The same caution about an element; codes of the kernel may hold underscores, shared ones hold hyphens. */
    static Caution caution(String elementId, org.roofspring.treatment.Caution caution, Source source) {
        String code = caution.code().replace('_', '-');
        return KernelTerms.caution(elementId,
                new org.roofspring.treatment.Caution(code, caution.severity(), caution.text()), source);
    }

    static String name(NamedElement element) {
        return element.getName() == null || element.getName().isBlank() ? element.getId() : element.getName();
    }

    /** A number for running text. */
    static String shown(double value) {
        return QuantityFormat.metric().number(value);
    }

    /** Sentences begin with a capital and end with a stop. */
    static String sentence(String text) {
        String capital = text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
        return capital.endsWith(".") ? capital : capital + ".";
    }
}

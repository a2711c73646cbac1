package org.roofspring.calc.standard.water;

import org.roofspring.site.NamedElement;

/** What to call a part in a sentence. */
public final class Names {
    private Names() {
    }

    /** Its name, or else its identifier. */
    public static String of(NamedElement element) {
        return element.getName() == null || element.getName().isBlank() ? element.getId() : element.getName();
    }
}

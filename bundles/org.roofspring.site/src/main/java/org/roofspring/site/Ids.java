package org.roofspring.site;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.ThreadLocalRandom;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;
import java.util.regex.Pattern;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;

/** Makes identifiers of elements: short, unique in their site, and telling what they name, such as tank-3k9f. */
public final class Ids {
    /** Without letters that are easily misread. */
    private static final String ALPHABET = "23456789abcdefghjkmnpqrstuvwxyz";

    /** What {@link #isValid} accepts, in words for messages. */
    public static final String ACCEPTED = "letters, digits, hyphen, dot and underscore are accepted, up to 64";
    private static final Pattern VALID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,63}");

    private Ids() {
    }

    /** Whether a text can stand as an identifier in a site file. */
    public static boolean isValid(String id) {
        return VALID.matcher(id).matches();
    }

    /** A new identifier for an element of the given class, not yet used in the site. */
    public static String newId(Site site, EClass type) {
        Set<String> used = used(site);
        return newId(type, used::contains, ThreadLocalRandom.current());
    }

    /**
     * A new identifier for an element of the given class.
     *
     * @param used   tells whether an identifier is taken
     * @param random where the digits come from
     */
    public static String newId(EClass type, Predicate<String> used, RandomGenerator random) {
        String prefix = type.getName().replaceAll("(?<=[a-z])(?=[A-Z])", "-").toLowerCase(Locale.ROOT) + "-";
        for (int length = 4;; length++) {
            for (int attempt = 0; attempt < 8; attempt++) {
                StringBuilder id = new StringBuilder(prefix);
                for (int i = 0; i < length; i++) {
                    id.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
                }
                if (!used.test(id.toString())) {
                    return id.toString();
                }
            }
        }
    }

    /** Gives an identifier to every element of the site that has none. */
    public static void assignMissing(Site site) {
        Set<String> used = used(site);
        assign(site, used);
        for (TreeIterator<EObject> all = site.eAllContents(); all.hasNext();) {
            if (all.next() instanceof Element element) {
                assign(element, used);
            }
        }
    }

    private static void assign(Element element, Set<String> used) {
        if (element.getId() == null) {
            String id = newId(element.eClass(), used::contains, ThreadLocalRandom.current());
            used.add(id);
            element.setId(id);
        }
    }

    private static Set<String> used(Site site) {
        Set<String> used = new HashSet<>();
        used.add(site.getId());
        site.eAllContents().forEachRemaining(object -> {
            if (object instanceof Element element) {
                used.add(element.getId());
            }
        });
        return used;
    }
}

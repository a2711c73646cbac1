package org.roofspring.ui.field;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.Preferences;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.UnitSystem;
import org.roofspring.site.Site;

/** In which units values are shown: a preference, or as each site says. It never changes a stored or computed value. */
public final class DisplayUnits {
    /** Preference that holds the name of a {@link UnitSystem}, or {@link #AS_SITE_SAYS}. */
    public static final String PREFERENCE = "units";
    /** Each site is shown in the units it prefers. */
    public static final String AS_SITE_SAYS = "AS_SITE_SAYS";
    private static final String NODE = "org.roofspring.ui";
    private static final int DIGITS = 4;

    private DisplayUnits() {
    }

    /** The preferences in which the choice is kept. */
    public static Preferences preferences() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }

    /** The units in which values of a site are shown. */
    public static UnitSystem system(Site site) {
        String choice = preferences().get(PREFERENCE, AS_SITE_SAYS);
        for (UnitSystem system : UnitSystem.values()) {
            if (system.name().equals(choice)) {
                return system;
            }
        }
        return switch (site.getPreferredUnits()) {
            case METRIC -> UnitSystem.METRIC;
            case US_CUSTOMARY -> UnitSystem.US_CUSTOMARY;
            case IMPERIAL -> UnitSystem.IMPERIAL;
        };
    }

    /** How results of a site are shown: four significant digits. */
    public static QuantityFormat format(Site site) {
        return new QuantityFormat(system(site), currency(site), DIGITS);
    }

    /** The site's currency as it is shown; a site that names none has plain amounts. */
    static String currency(Site site) {
        return site.getCurrency() == null || site.getCurrency().isBlank() ? "cur" : site.getCurrency();
    }
}

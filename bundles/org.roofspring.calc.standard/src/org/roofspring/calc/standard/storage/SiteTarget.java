package org.roofspring.calc.standard.storage;

import org.eclipse.emf.ecore.EAttribute;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Target;

/** What a site aims at; where nothing is stated, the defaults of the model. */
final class SiteTarget {
    private final Target target;

    SiteTarget(Site site) {
        target = site.getTarget() == null ? SiteFactory.eINSTANCE.createTarget() : site.getTarget();
    }

    /** Share of the days with demand that are to be met [-]. */
    double timeReliability() {
        return value(SitePackage.Literals.TARGET__TIME_RELIABILITY).si();
    }

    /** Confidence of intervals [-]. */
    double confidence() {
        return value(SitePackage.Literals.TARGET__CONFIDENCE).si();
    }

    Input timeReliabilityInput() {
        return input("R", "target: share of days with demand met in full",
                SitePackage.Literals.TARGET__TIME_RELIABILITY);
    }

    Input confidenceInput() {
        return input("c", "confidence", SitePackage.Literals.TARGET__CONFIDENCE);
    }

    private Quantity value(EAttribute attribute) {
        return Given.value(target, attribute).orElseThrow();
    }

    private Input input(String symbol, String meaning, EAttribute attribute) {
        return target.eContainer() == null ? new Input(symbol, meaning, value(attribute))
                : Given.input(symbol, meaning, target, attribute, value(attribute));
    }
}

package org.roofspring.calc;

import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * One calculation over a site. Implementations are stateless and may be called from several threads at once; the same
 * snapshot and inputs must always give the same outcome. Publish as a service of this type and describe it with
 * {@link CalculationInfo}.
 */
public interface Calculation {

    /**
     * Says whether this site has what the calculation needs; quick, and never throws.
     *
     * @param site the frozen copy of the site; writing to it throws
     */
    Applicability check(SiteSnapshot site);

    /**
     * Computes. Called only when {@link #check} said yes and every required calculation has completed.
     *
     * @param site    the frozen copy of the site
     * @param inputs  the findings of the calculations that {@link CalculationInfo#requires()} and
     *                {@link CalculationInfo#uses()} name
     * @param context cancelling and random seed
     * @return findings, or the reasons why there is no answer; never null
     * @throws java.util.concurrent.CancellationException when {@link CalculationContext#checkCancelled()} says so
     */
    Outcome calculate(SiteSnapshot site, Inputs inputs, CalculationContext context);
}

package org.roofspring.ui.tests.workbench;

import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.site.snapshot.SiteSnapshot;

/** A plug-in with a bug. */
final class FailingCalculation implements Calculation {
    @Override
    public Applicability check(SiteSnapshot site) {
        return Applicability.yes();
    }

    @Override
    public Outcome calculate(SiteSnapshot site, Inputs inputs, CalculationContext context) {
        throw new UnsupportedOperationException("a bug on purpose");
    }
}

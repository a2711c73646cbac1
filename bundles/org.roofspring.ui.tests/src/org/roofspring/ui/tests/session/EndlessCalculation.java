package org.roofspring.ui.tests.session;

import java.util.concurrent.CountDownLatch;

import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Runs until it is cancelled. */
@CalculationInfo(id = "test.endless", version = "1", title = "Endless", reads = "*")
final class EndlessCalculation implements Calculation {
    final CountDownLatch started = new CountDownLatch(1);
    final CountDownLatch stopped = new CountDownLatch(1);

    @Override
    public Applicability check(SiteSnapshot site) {
        return Applicability.yes();
    }

    @Override
    public Outcome calculate(SiteSnapshot site, Inputs inputs, CalculationContext context) {
        started.countDown();
        try {
            while (true) {
                context.checkCancelled();
                Thread.onSpinWait();
            }
        } finally {
            stopped.countDown();
        }
    }
}

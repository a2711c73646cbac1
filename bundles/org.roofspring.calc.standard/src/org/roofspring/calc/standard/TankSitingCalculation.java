package org.roofspring.calc.standard;

import java.util.List;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.drainage.TankGround;
import org.roofspring.site.Tank;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * Where the tanks stand: neighbours that pollute, ground that bears them, water that lifts them, and their
 * overflow.
 */
@Component
@CalculationInfo(id = "tank.siting", version = "1", title = "Siting of tanks", reads = { "Tank", "Siting" })
public final class TankSitingCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        return sited(snapshot).isEmpty()
                ? Applicability.no("Nothing is known yet of the ground and surroundings of any tank.")
                : Applicability.yes();
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        AnswerBuilder answer = new AnswerBuilder(null);
        sited(snapshot).forEach(tank -> answer.include(TankGround.of(tank)));
        return answer.build();
    }

    private static List<Tank> sited(SiteSnapshot snapshot) {
        return snapshot.site().getTanks().stream().filter(tank -> tank.isInUse() && tank.getSiting() != null).toList();
    }
}

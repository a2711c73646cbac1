package org.roofspring.calc.standard.pumping;

import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.ServedUses;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;

/**
 * The water that a pump lifts: what the uses beyond it ask for, less what the store could not supply over the record.
 *
 * @param asked    by the uses
 * @param supplied share of the demand that the storage balance supplies; 1 where there is no balance
 */
record Lifted(ServedUses asked, double supplied) {
    private static final Source DEMAND = Source.definition("amounts and calendars of the uses beyond the pump");

    static Lifted of(Site site, Pump pump, Inputs inputs) {
        double supplied = inputs.finding("storage.balance", "volumetricReliability")
                .map(finding -> ((FindingValue.Number) finding.value()).quantity().si()).orElse(1.0);
        return new Lifted(ServedUses.of(site, pump), supplied);
    }

    /** In a mean year [m3]. */
    double yearlyM3() {
        return asked.yearlyM3() * supplied;
    }

    /** On the day of the greatest use, with water in store [m3]. */
    double busiestDayM3() {
        return asked.busiestDayM3();
    }

    void say(AnswerBuilder answer) {
        Quantity year = Quantity.of(yearlyM3(), Units.M3);
        answer.number("yearlyVolume", "Volume lifted in a year", year,
                Step.of("Vy", "volume lifted in a mean year", "D R", year, DEMAND,
                        new Input("D", "demand of a mean year", Quantity.of(asked.yearlyM3(), Units.M3)),
                        new Input("R", "share of demand that the storage balance supplies; 1 where there is none",
                                Quantity.of(supplied))));
        Quantity day = Quantity.of(busiestDayM3(), Units.M3);
        answer.number("busiestDay", "Volume lifted on the busiest day", day,
                Step.of("Vd", "greatest demand of any day of the calendars", "largest daily sum", day, DEMAND));
    }
}

package org.roofspring.calc.standard.review;

import org.roofspring.calc.standard.water.PumpedWater;
import org.roofspring.site.Element;
import org.roofspring.site.PipeRun;
import org.roofspring.site.PressureVessel;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpCandidate;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.Tank;

/** What the choice of a pump rests on: its own data, and all that sets its head, suction and filling on this site. */
public final class PumpBasis {
    private PumpBasis() {
    }

    /** The basis of a decision for a candidate: its data and the line that it is to work on. */
    public static Basis of(Site site, PumpCandidate candidate) {
        return data(candidate).and(line(site, (Pump) candidate.eContainer()));
    }

    /** The basis of a decision for a pump as it is designed. */
    public static Basis of(Site site, Pump pump) {
        return data(pump).and(line(site, pump));
    }

    /** Measured points and limits of a pump or candidate. */
    static Basis data(Element pumpOrCandidate) {
        return Basis.of(pumpOrCandidate, Literals.PUMP_DATA__POINTS, Literals.PUMP_DATA__MOTOR_EFFICIENCY,
                Literals.PUMP_DATA__RATED_POWER, Literals.PUMP_DATA__MIN_SUBMERGENCE, Literals.PUMP_DATA__MAX_STARTS);
    }

    /** Levels, water, pipes and switching of a pump; the pump's own features alone where no line can be read. */
    static Basis line(Site site, Pump pump) {
        Basis basis = Basis.of(pump, Literals.PUMP__KIND, Literals.PUMP__LEVEL, Literals.PUMP__COUNT, Literals.PUMP__ARRANGEMENT,
                Literals.PUMP__SPEED_RATIO, Literals.PUMP__CUT_OUT_HEIGHT, Literals.PUMP__SUPPLY_TIMES)
                .and(Basis.of(site, Literals.SITE__ALTITUDE, Literals.SITE__WATER_TEMPERATURE_MIN,
                        Literals.SITE__WATER_TEMPERATURE_USUAL, Literals.SITE__WATER_TEMPERATURE_MAX));
        if (!(PumpedWater.read(site, pump) instanceof PumpedWater.Reading.Found found)) {
            return basis;
        }
        PumpedWater water = found.water();
        basis = basis.and(Basis.of(water.from(), Literals.TANK__BASE_LEVEL, Literals.TANK__HEIGHT, Literals.TANK__OUTLET_HEIGHT,
                Literals.TANK__OVERFLOW_HEIGHT));
        if (water.to() instanceof Tank tank) {
            basis = basis.and(Basis.of(tank, Literals.TANK__BASE_LEVEL, Literals.TANK__HEIGHT, Literals.TANK__INLET_HEIGHT,
                    Literals.TANK__OVERFLOW_HEIGHT, Literals.TANK__START_HEIGHT, Literals.TANK__STOP_HEIGHT,
                    Literals.TANK__CAPACITY, Literals.TANK__LEVEL_VOLUME));
        } else if (water.to() instanceof PressureVessel vessel) {
            basis = basis.and(Basis.of(vessel, Literals.PRESSURE_VESSEL__LEVEL, Literals.PRESSURE_VESSEL__CUT_IN,
                    Literals.PRESSURE_VESSEL__CUT_OUT));
        }
        for (PipeRun run : water.runs()) {
            basis = basis.and(Basis.of(run, Literals.PIPE_RUN__BORE, Literals.PIPE_RUN__LENGTH, Literals.PIPE_RUN__MATERIAL,
                    Literals.PIPE_RUN__ROUGHNESS, Literals.PIPE_RUN__AGED_ROUGHNESS, Literals.PIPE_RUN__FITTINGS));
        }
        return basis;
    }
}

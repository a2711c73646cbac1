package org.roofspring.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.roofspring.hydraulics.AgeingRun;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.pump.DutyPoint;
import org.roofspring.hydraulics.pump.EnergyBasis;
import org.roofspring.hydraulics.pump.PumpCurve;
import org.roofspring.hydraulics.pump.PumpLaws;
import org.roofspring.hydraulics.pump.PumpPoint;
import org.roofspring.hydraulics.pump.PumpSet;
import org.roofspring.hydraulics.pump.PumpedLine;
import org.roofspring.hydraulics.pump.SystemCurve;
import org.roofspring.hydraulics.pump.SystemState;
import org.roofspring.hydraulics.pump.WorkingRange;

/**
 * 500 invented pumps on one line in 25 states.
 *
 * @param pumps  their heads fall all along, so that plain bisection over the whole curve finds the one crossing
 * @param line   with a suction pipe, a strainer and a rising main
 * @param states five levels of each tank, cold and hot water, new and worn pipe
 */
record BoardCase(List<PumpSet> pumps, PumpedLine line, List<SystemState> states) {

    static final int PUMPS = 500;
    static final int LEVELS = 5;
    static final int STATES = LEVELS * LEVELS;
    private static final int HALVINGS = 60;

    static BoardCase invented() {
        Random random = new Random(5);
        List<PumpSet> pumps = new ArrayList<>();
        for (int i = 0; i < PUMPS; i++) {
            pumps.add(PumpSet.single(pump(i, random)).withMotorEfficiency(0.8));
        }
        PumpedLine line = new PumpedLine(2, List.of(new AgeingRun(new PipeRun(0.052, 6, 7e-6, 3), 1e-4)),
                flow -> 8e4 * flow * flow, flow -> 3e5 * flow * flow,
                List.of(new AgeingRun(new PipeRun(0.0418, 95, 7e-6, 12), 3e-4)));
        List<SystemState> states = new ArrayList<>();
        for (int i = 0; i < STATES; i++) {
            states.add(new SystemState(-1 + 2.5 * (i / LEVELS) / (LEVELS - 1),
                    12 + (double) (i % LEVELS) / (LEVELS - 1), i % 2 == 0 ? 8 : 30, 86_000 - 2_000 * (i % 3), i % 4 >= 2));
        }
        return new BoardCase(pumps, line, states);
    }

    private static PumpCurve pump(int number, Random random) {
        int points = 5 + random.nextInt(6);
        double shutOffM = 12 + 24 * random.nextDouble();
        double lastM3PerS = (1 + 3 * random.nextDouble()) * 1e-3;
        double best = 0.45 + 0.3 * random.nextDouble();
        List<PumpPoint> list = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double share = (double) i / (points - 1);
            list.add(new PumpPoint(lastM3PerS * share, shutOffM * (1 - 0.1 * share - 0.85 * share * share),
                    OptionalDouble.of(2.4 * best * share * (1 - 0.6 * share)),
                    OptionalDouble.of(1.5 + 2 * share * share), OptionalDouble.empty()));
        }
        return PumpCurve.of("pump " + number, list);
    }

    /** As the board computes them. */
    List<WorkingRange> run() {
        return WorkingRange.ofAll(pumps, line, states, () -> false);
    }

    /** The same duty points by plain bisection; null where there is none. */
    List<List<DutyPoint>> bisected() {
        List<SystemCurve> systems = states.stream().map(line::at).toList();
        List<List<DutyPoint>> all = new ArrayList<>(PUMPS);
        for (PumpSet pump : pumps) {
            List<DutyPoint> duties = new ArrayList<>(STATES);
            for (SystemCurve system : systems) {
                duties.add(bisected(pump, system));
            }
            all.add(duties);
        }
        return all;
    }

    private static DutyPoint bisected(PumpSet pump, SystemCurve system) {
        double low = 0;
        double high = pump.highestFlowM3PerS();
        if (pump.headM(low) <= system.headM(low) || pump.headM(high) >= system.headM(high)) {
            return null;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (pump.headM(middle) > system.headM(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return duty(pump, system, low);
    }

    private static DutyPoint duty(PumpSet pump, SystemCurve system, double flowM3PerS) {
        double headM = pump.headM(flowM3PerS);
        double efficiency = pump.efficiency(flowM3PerS).orElseThrow();
        double hydraulicW = PumpLaws.hydraulicPowerW(system.water().densityKgPerM3(), flowM3PerS, headM);
        double shaftW = hydraulicW / efficiency;
        double inputW = shaftW / pump.motorEfficiency().orElseThrow();
        return new DutyPoint(flowM3PerS, headM, true, OptionalDouble.of(efficiency), hydraulicW,
                OptionalDouble.of(shaftW), OptionalDouble.of(inputW), system.npshAvailableM(flowM3PerS),
                pump.npshRequiredM(flowM3PerS), Optional.of(EnergyBasis.MOTOR_EFFICIENCY),
                OptionalDouble.of(inputW / flowM3PerS),
                OptionalDouble.of(flowM3PerS / pump.bestEfficiencyFlowM3PerS().orElseThrow()));
    }
}

package org.roofspring.calc.standard.supply;

import java.util.List;
import java.util.Optional;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Outcome.Problem;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.PipePaths;
import org.roofspring.calc.standard.water.PumpedWater;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.pump.DirectSupply;
import org.roofspring.hydraulics.pump.DutyOutcome;
import org.roofspring.hydraulics.pump.PressureSwitch;
import org.roofspring.hydraulics.pump.PumpOperation;
import org.roofspring.hydraulics.pump.SystemCurve;
import org.roofspring.hydraulics.pump.SystemState;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.PipeRun;
import org.roofspring.site.PressureVessel;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;

/** Direct supply: a pump on a pressure vessel, its drawdown, its switch and how often it starts. */
public final class VesselFindings {
    private static final Source BOYLE = Source.definition("Boyle's law at steady temperature, absolute pressures");

    private VesselFindings() {
    }

    /** The findings about a vessel, or what is missing. */
    public static Outcome of(Site site, PressureVessel vessel) {
        Optional<Pump> pump = new PipePaths(site).upstream(vessel, node -> node instanceof Pump)
                .map((List<PipeRun> runs) -> (Pump) runs.get(0).getFrom());
        if (pump.isEmpty() || !PumpedWater.hasCurve(pump.get())) {
            return problem(vessel, null, "No pump with measured points leads to " + vessel.getName() + ".");
        }
        if (vessel.getVolume() == null) {
            return problem(vessel, "volume", "The volume of " + vessel.getName() + " is missing.");
        }
        try {
            return switch (PumpedWater.read(site, pump.get())) {
                case PumpedWater.Reading.Missing missing -> new Outcome.NotComputable(missing.sentences().stream()
                        .map(sentence -> new Problem(vessel.getId(), null, sentence)).toList(), List.of());
                case PumpedWater.Reading.Found found -> of(vessel, pump.get(), found.water());
            };
        } catch (IllegalArgumentException e) {
            return problem(vessel, null, vessel.getName() + ": " + e.getMessage() + ".");
        }
    }

    private static Outcome problem(PressureVessel vessel, String feature, String text) {
        return new Outcome.NotComputable(new Problem(vessel.getId(), feature, text));
    }

    private static Outcome of(PressureVessel vessel, Pump pump, PumpedWater pumped) {
        PressureSwitch pressureSwitch = new PressureSwitch(vessel.getCutIn().si(), vessel.getCutOut().si());
        var kernelVessel = vessel.getPrecharge() == null
                ? org.roofspring.hydraulics.pump.PressureVessel.forCutIn(vessel.getVolume().si(), pressureSwitch.cutInPa())
                : new org.roofspring.hydraulics.pump.PressureVessel(vessel.getVolume().si(), vessel.getPrecharge().si());
        SystemState design = pumped.designState();
        SystemCurve toVessel = pumped.line().at(new SystemState(design.suctionLevelM(), vessel.getLevel().si(),
                design.temperatureC(), design.airPressurePa(), false));
        DirectSupply supply = DirectSupply.of(PumpedWater.pumpSet(pump, pump, pump.getName()), toVessel, kernelVessel,
                pressureSwitch);
        AnswerBuilder answer = new AnswerBuilder(vessel.getId());
        flow(answer, "flowAtCutIn", "Flow of the pump when it has just started", supply.atCutIn(), vessel.getCutIn(),
                toVessel.water(), "cutIn", vessel);
        flow(answer, "flowAtCutOut", "Flow of the pump when it is about to stop", supply.atCutOut(), vessel.getCutOut(),
                toVessel.water(), "cutOut", vessel);
        drawdown(answer, vessel, kernelVessel.prechargePa(), supply, toVessel);
        starts(answer, vessel, pump, supply);
        cautions(answer, vessel, kernelVessel.prechargePa(), supply);
        return answer.build();
    }

    private static void flow(AnswerBuilder answer, String id, String title, DutyOutcome outcome, Quantity pressure,
            WaterProperties water, String feature, PressureVessel vessel) {
        outcome.working().ifPresent(duty -> {
            Quantity flow = Quantity.ofSi(duty.flowM3PerS(), Units.L_PER_S);
            answer.number(id, title, flow, Step.of("Q", "where the pump has the head of lift, pipe and pressure",
                    "Hpump(Q) = Hs + hl(Q) + p / (rho g)", flow, Source.definition("intersection of pump and system curve"),
                    new Input("p", "pressure of the switch", pressure.as(Units.KPA), vessel.getId(), feature),
                    new Input("rho", "density", Quantity.of(water.densityKgPerM3(), Units.KG_PER_M3))));
        });
    }

    private static void drawdown(AnswerBuilder answer, PressureVessel vessel, double prechargePa, DirectSupply supply,
            SystemCurve toVessel) {
        Quantity drawdown = Quantity.ofSi(supply.drawdownM3(), Units.L);
        answer.number("drawdown", "Water drawn between two runs of the pump", drawdown,
                Step.of("Vd", "water in the vessel at cut-out less that at cut-in",
                        "V (p0 + pa) (1 / (p1 + pa) - 1 / (p2 + pa))", drawdown, BOYLE,
                        new Input("V", "volume", vessel.getVolume().as(Units.L), vessel.getId(), "volume"),
                        new Input("p0", vessel.getPrecharge() == null ? "precharge, taken 20 kPa under cut-in, common practice"
                                : "precharge", Quantity.ofSi(prechargePa, Units.KPA), vessel.getId(), "precharge"),
                        new Input("p1", "cut-in pressure", vessel.getCutIn().as(Units.KPA), vessel.getId(), "cutIn"),
                        new Input("p2", "cut-out pressure", vessel.getCutOut().as(Units.KPA), vessel.getId(), "cutOut"),
                        new Input("pa", "air pressure", Quantity.ofSi(toVessel.airPressurePa(), Units.KPA))));
    }

    private static void starts(AnswerBuilder answer, PressureVessel vessel, Pump pump, DirectSupply supply) {
        supply.mostStartsPerS().ifPresent(perS -> {
            Quantity starts = Quantity.ofSi(perS, Units.PER_H);
            double meanM3PerS = (supply.atCutIn().working().get().flowM3PerS()
                    + supply.atCutOut().working().get().flowM3PerS()) / 2;
            answer.number("mostStarts", "Most starts that any draw-off can cause", starts,
                    Step.of("n", "when half the mean flow of the pump is drawn", "Qm / (4 Vd)", starts,
                            Source.definition("volume, flow and time"),
                            new Input("Qm", "mean of the flows at cut-in and cut-out",
                                    Quantity.ofSi(meanM3PerS, Units.L_PER_S)),
                            new Input("Vd", "drawdown", Quantity.ofSi(supply.drawdownM3(), Units.L))));
            if (pump.getMaxStarts() != null && perS > pump.getMaxStarts().si()) {
                warn(answer, "pump.starts", pump.getId(), "The pump on {0} can start {1}, but its motor bears {2}: at least {3}"
                        + " of drawdown is needed, so a larger vessel or pressures further apart.",
                        Source.definition("volume, flow and time"), String.valueOf(vessel.getName()), starts,
                        pump.getMaxStarts().as(Units.PER_H), Quantity.ofSi(PumpOperation.leastSwitchVolumeM3(meanM3PerS,
                                Math.max(1e-9, pump.getMaxStarts().si())), Units.L));
            }
        });
    }

    private static void cautions(AnswerBuilder answer, PressureVessel vessel, double prechargePa, DirectSupply supply) {
        if (!supply.stops()) {
            warn(answer, "vessel.never-stops", vessel.getId(), "The pump does not come up to the cut-out pressure of {0}: it never"
                    + " stops, overheats with closed taps, and wastes energy ({1}). Lower the cut-out or choose another pump.",
                    Source.definition("pump curve against the pressure"), vessel.getCutOut().as(Units.KPA),
                    supply.atCutOut().reason());
        }
        if (!supply.prechargeFits()) {
            warn(answer, "vessel.precharge", vessel.getId(), "The precharge of {0} is above the cut-in pressure of {1}: the flow"
                    + " stops for a moment before the pump starts. Set it about 20 kPa under cut-in, with the vessel empty.",
                    Source.commonPractice("precharge of pressure vessels"), Quantity.ofSi(prechargePa, Units.KPA),
                    vessel.getCutIn().as(Units.KPA));
        }
        answer.caution(new Caution("vessel.pressure", Severity.DANGER, vessel.getId(), "A pressure vessel stores energy: it needs a"
                + " safety valve and a rating over every pressure that the pump can reach; empty it before it is opened.",
                List.of(), "Follow the local code for pressure equipment.", Source.commonPractice("pressure vessels")));
    }

    private static void warn(AnswerBuilder answer, String code, String elementId, String text, Source source, Object... args) {
        answer.caution(new Caution(code, Severity.WARNING, elementId, text, List.of(args), "", source));
    }
}

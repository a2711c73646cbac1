package org.roofspring.calc.standard.pumping;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.PipePaths;
import org.roofspring.calc.standard.water.TankChain;
import org.roofspring.calc.standard.water.TankWater;
import org.roofspring.hydraulics.pump.PumpOperation;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.EnergySource;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;

/** How a pump with a known flow is run: hours, energy and its cost, filling, starts, sun or generator, outages. */
public final class RunningFindings {
    /** Sun of a day in the poorest month as a time at 1000 W/m2 [s]: assumed; take that of the place. */
    private static final double FULL_SUN_S = 4 * 3600;
    private static final double PERFORMANCE_RATIO = 0.7;
    private static final double STARTING_FACTOR = 3;
    private static final Source DEFINITION = Source.definition("volume, flow and time");

    private final Site site;
    private final Pump pump;
    private final Lifted lifted;
    private final Quantity flow;
    private final Optional<Quantity> specificEnergy;
    private final Optional<Quantity> inputPower;
    private final Optional<Tank> filled;
    private final AnswerBuilder answer;

    private RunningFindings(Site site, Pump pump, Quantity flow, Inputs inputs) {
        this.site = site;
        this.pump = pump;
        this.lifted = Lifted.of(site, pump, inputs);
        this.flow = flow;
        this.specificEnergy = number(inputs, "specificEnergy");
        this.inputPower = number(inputs, "inputPower");
        this.filled = new PipePaths(site).deliveredTank(pump);
        this.answer = new AnswerBuilder(pump.getId());
    }

    /**
     * The findings about a pump.
     *
     * @param flow   at its duty point
     * @param inputs the duty of pumps and, where there is one, the storage balance
     */
    public static Outcome.Completed of(Site site, Pump pump, Quantity flow, Inputs inputs) {
        RunningFindings running = new RunningFindings(site, pump, flow, inputs);
        running.lifted.say(running.answer);
        running.hours();
        running.energy();
        running.filling();
        running.driving();
        running.outage();
        return running.answer.build();
    }

    private Optional<Quantity> number(Inputs inputs, String id) {
        return inputs.finding("pump.duty", id, pump.getId())
                .map(finding -> ((FindingValue.Number) finding.value()).quantity());
    }

    private Input flowInput() {
        return new Input("Q", "flow at the duty point", flow.as(Units.L_PER_S));
    }

    private Input busiestInput() {
        return new Input("Vd", "volume on the busiest day", Quantity.of(lifted.busiestDayM3(), Units.M3));
    }

    private void hours() {
        double neededS = PumpOperation.runningTimeS(lifted.busiestDayM3(), flow.si());
        Quantity needed = Quantity.ofSi(neededS, Units.H);
        answer.number("runningTime", "Running time on the busiest day", needed,
                Step.of("t", "time to lift the volume of the busiest day", "Vd / Q", needed, DEFINITION, busiestInput(),
                        flowInput()));
        Quantity supplied = Quantity.of(24 * TankChain.supplyShare(pump), Units.H);
        answer.number("suppliedHours", "Hours of power in a mean day", supplied,
                Step.of("ts", "hours in which there is power", "sum of the supply times; 24 h where none is given", supplied,
                        new Source(Source.Standing.USER, "supply times of the pump")));
        if (needed.value() > supplied.value()) {
            warn("pump.hours", Severity.WARNING, "On the busiest day the pump must run {0}, but there is power for only"
                    + " {1}: take a larger pump, longer hours, or more overhead storage.", DEFINITION, needed, supplied);
        }
    }

    private void energy() {
        if (specificEnergy.isEmpty()) {
            warn("pump.no-energy", Severity.INFO, "Neither efficiency nor input power was measured, so energy and its cost"
                    + " are not known.", Source.definition("how the model was read"));
            return;
        }
        Input each = new Input("e", "energy for each volume", specificEnergy.get());
        Input volume = new Input("Vy", "volume lifted in a year", Quantity.of(lifted.yearlyM3(), Units.M3));
        double yearJ = PumpOperation.energyJ(lifted.yearlyM3(), specificEnergy.get().si());
        Quantity year = Quantity.ofSi(yearJ, Units.KWH);
        String basis = inputPower.isPresent() ? "" : ", at the shaft; the meter reads more";
        answer.number("yearlyEnergy", "Energy in a year" + basis, year,
                Step.of("E", "energy in a year" + basis, "e Vy", year, Source.definition("energy"), each, volume));
        if (site.getEconomy() != null && site.getEconomy().getEnergyPrice() != null) {
            Quantity price = site.getEconomy().getEnergyPrice();
            Quantity cost = Quantity.of(year.value() * price.value(), Units.MONEY);
            answer.number("yearlyEnergyCost", "Cost of energy in a year", cost,
                    Step.of("c", "cost of energy in a year", "E p", cost, Source.definition("energy times price"),
                            new Input("E", "energy in a year", year), new Input("p", "price of energy", price,
                                    site.getEconomy().getId(), "energyPrice")));
        }
    }

    private void filling() {
        OptionalDouble switchM3 = filled.map(TankWater::switchVolumeM3).orElse(OptionalDouble.empty());
        if (switchM3.isEmpty()) {
            return;
        }
        Quantity volume = Quantity.of(switchM3.getAsDouble(), Units.M3);
        Input between = new Input("Vs", "volume between start and stop height of the tank", volume);
        Quantity time = Quantity.ofSi(PumpOperation.timeToFillS(volume.value(), flow.si(), 0).orElseThrow(), Units.MIN);
        answer.number("timeToFill", "Time to fill from start to stop height", time,
                Step.of("tf", "with nothing drawn, at the flow of the lowest water", "Vs / Q", time, DEFINITION, between,
                        flowInput()));
        Quantity starts = Quantity.of(lifted.busiestDayM3() / volume.value(), Units.PER_D);
        answer.number("startsPerDay", "Starts on the busiest day", starts,
                Step.of("n", "fillings of the volume between the heights", "Vd / Vs", starts, DEFINITION, busiestInput(),
                        between));
        Quantity most = Quantity.ofSi(PumpOperation.mostStartsPerS(flow.si(), volume.value()), Units.PER_H);
        answer.number("mostStarts", "Most starts that any draw-off can cause", most,
                Step.of("nmax", "when half the flow of the pump is drawn", "Q / (4 Vs)", most, DEFINITION, flowInput(),
                        between));
        if (pump.getMaxStarts() != null && most.si() > pump.getMaxStarts().si()) {
            double leastM3 = PumpOperation.leastSwitchVolumeM3(flow.si(), Math.max(1e-9, pump.getMaxStarts().si()));
            warn("pump.starts", Severity.WARNING, "The pump can start {0}, but its motor bears {1}: leave at least {2}"
                    + " between the heights at which it starts and stops.", DEFINITION, most,
                    pump.getMaxStarts().as(Units.PER_H), Quantity.ofSi(leastM3, Units.L));
        }
    }

    private void driving() {
        EnergySource source = pump.getEnergySource();
        if (specificEnergy.isPresent() && (source == EnergySource.SOLAR || source == EnergySource.SOLAR_BATTERY)) {
            double dayJ = PumpOperation.energyJ(lifted.busiestDayM3(), specificEnergy.get().si());
            Quantity panel = Quantity.of(PumpOperation.solarPanelPowerW(dayJ, FULL_SUN_S, PERFORMANCE_RATIO), Units.W);
            answer.number("panelPower", "Peak power of solar panels", panel, Step.of("Pp",
                    "panels that give the energy of the busiest day in 4 h of full sun, an assumption for the poorest month:"
                            + " scale it by the sun of the place", "e Vd / (4 h x 0.7)", panel,
                    Source.commonPractice("performance ratio 0.7"), new Input("e", "energy for each volume",
                            specificEnergy.get()), busiestInput()));
        }
        if (inputPower.isPresent() && (source == EnergySource.GENERATOR || source == EnergySource.ENGINE)) {
            Quantity power = Quantity.of(PumpOperation.generatorPowerW(inputPower.get().si(), STARTING_FACTOR), Units.W);
            answer.number("generatorPower", "Power of a generator that starts the motor", power,
                    Step.of("Pg", "three times the running power, for a motor started direct", "3 Pe", power,
                            Source.commonPractice("starting factor of motors"),
                            new Input("Pe", "power taken by the motor", inputPower.get())));
            answer.caution(new Caution("pump.generator", Severity.DANGER, pump.getId(), "The exhaust of an engine kills: it"
                    + " never runs inside a room, a pit or a tank, nor near an open window.", List.of(),
                    "Ask a licensed electrician how a generator is connected, and follow the local code.",
                    Source.commonPractice("carbon monoxide from engines")));
        }
    }

    /** Days that the overhead tank lasts without the pump, against what the target asks. */
    private void outage() {
        OptionalDouble fullM3 = filled.map(tank -> TankWater.volumeM3(tank, TankWater.topHeightM(tank)))
                .orElse(OptionalDouble.empty());
        if (fullM3.isEmpty() || lifted.busiestDayM3() <= 0) {
            return;
        }
        double deadM3 = Given.si(filled.get(), SitePackage.Literals.TANK__DEAD_VOLUME, 0);
        Quantity usable = Quantity.of(Math.max(0, fullM3.getAsDouble() - deadM3), Units.M3);
        Quantity days = Quantity.of(usable.value() / lifted.busiestDayM3(), Units.D);
        answer.number("outageBridged", "Time that the full tank lasts without the pump", days,
                Step.of("d", "days of the greatest use", "Vt / Vd", days, DEFINITION,
                        new Input("Vt", "volume that can be drawn from the full tank", usable), busiestInput()));
        Quantity target = site.getTarget() == null ? null : site.getTarget().getPumpOutage();
        if (target != null && days.si() < target.si()) {
            warn("pump.outage", Severity.WARNING, "Without pump or power the full tank lasts {0}; the target asks for {1}.",
                    new Source(Source.Standing.USER, "target of the site"), days, target.as(Units.D));
        }
    }

    private void warn(String code, Severity severity, String text, Source source, Object... arguments) {
        answer.caution(new Caution(code, severity, pump.getId(), text, List.of(arguments), "", source));
    }
}

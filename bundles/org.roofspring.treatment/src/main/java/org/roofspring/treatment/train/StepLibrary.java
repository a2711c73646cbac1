package org.roofspring.treatment.train;

import java.util.List;
import java.util.OptionalDouble;

import org.roofspring.treatment.LogRange;
import org.roofspring.treatment.Removal;
import org.roofspring.treatment.Source;
import org.roofspring.treatment.disinfection.Baffling;
import org.roofspring.treatment.disinfection.Boiling;
import org.roofspring.treatment.disinfection.SolarDisinfection;
import org.roofspring.treatment.internal.Checks;

/**
 * Steps with default ranges, needs and upkeep, every one editable. Ranges by class of technology are from memory; head
 * losses, flow limits and lives are assumed until a data sheet replaces them.
 */
public final class StepLibrary {
    public static final Source TECHNOLOGY = Source.fromMemory("WHO Guidelines for Drinking-water Quality, 4th ed, "
            + "Table 7.8 (household treatment: baseline to maximum)");
    public static final Source CARTRIDGE = Source.fromMemory("US EPA, Long Term 2 Enhanced Surface Water Treatment "
            + "Rule Toolbox Guidance Manual: cartridge filters to 2 log, to 2.5 log in series, after a challenge test");
    public static final Source NO_CREDIT = Source.commonPractice("no pathogen credit");
    public static final Source UPKEEP = Source.commonPractice("usual interval");
    public static final Source DATA_SHEET = Source.assumed("typical unit; take the maker's data sheet");

    private static final OptionalDouble NO_LIMIT = OptionalDouble.empty();
    private static final double DAY_S = 86_400;
    private static final double WEEK_S = 7 * DAY_S;
    private static final double MONTH_S = 365.2425 / 12 * DAY_S;
    private static final double HALF_YEAR_S = 6 * MONTH_S;
    private static final double YEAR_S = 12 * MONTH_S;
    private static final double TEN_L_PER_MIN = 10 / 60_000.0;

    private StepLibrary() {
    }

    /** One of each, with usual settings, in the order from the roof to the use. */
    public static List<TrainStep> palette() {
        return List.of(meshScreen(0.001), firstFlush(1), settling(DAY_S),
                cartridge(Cartridge.Media.STRING_WOUND, 5e-6, Cartridge.Rating.NOMINAL),
                cartridge(Cartridge.Media.PLEATED, 1e-6, Cartridge.Rating.ABSOLUTE),
                ceramic(Ceramic.Form.CANDLE, true), ceramic(Ceramic.Form.BLOCK, false), granularCarbon(120),
                slowSand(0.2 / 3600, 30 * DAY_S), membrane(Membrane.Kind.MICROFILTRATION),
                membrane(Membrane.Kind.ULTRAFILTRATION), membrane(Membrane.Kind.NANOFILTRATION),
                membrane(Membrane.Kind.REVERSE_OSMOSIS), uvLamp(40),
                chlorination(OptionalDouble.empty(), 1800, Baffling.STANDING), boil(0, Boiling.Agency.EPA, 60),
                solarBottles(SolarDisinfection.Sky.CLEAR));
    }

    public static TrainStep meshScreen(double apertureM) {
        return step("mesh-screen", "mesh screen", new MeshScreen(apertureM), Removal.none(NO_CREDIT),
                outside(1.0, NO_LIMIT, task("Clear leaves from the mesh and look for holes", WEEK_S, 10)));
    }

    public static TrainStep firstFlush(double depthMm) {
        return step("first-flush", "first-flush diverter", new FirstFlush(depthMm, true), Removal.none(NO_CREDIT),
                outside(0.7, NO_LIMIT,
                        task("Drain the diverter, clean its outlet, check that it empties", WEEK_S, 10)));
    }

    public static TrainStep settling(double standingS) {
        Removal removal = new Removal(range(0, 0.5), range(0, 0.5), range(0, 1), range(0, 1));
        return step("settling", "settling in the tank", new Settling(standingS, true), removal,
                outside(0.5, NO_LIMIT, task("Measure the sludge and have it removed before it reaches the outlet; "
                        + "nobody enters a tank without a confined-space procedure", YEAR_S, 60)));
    }

    public static TrainStep cartridge(Cartridge.Media media, double ratingM, Cartridge.Rating rating) {
        Cartridge cartridge = new Cartridge(media, ratingM, rating);
        LogRange protozoa = new LogRange(2, 2.5, CARTRIDGE);
        Removal removal = new Removal(new LogRange(2, 4, TECHNOLOGY), LogRange.none(Cartridge.SIZE_SOURCE), protozoa,
                protozoa);
        String kind = media == Cartridge.Media.STRING_WOUND ? "string-wound" : "pleated";
        String size = Checks.shown(Math.round(ratingM * 1e8) / 100.0);
        String stated = rating == Cartridge.Rating.NOMINAL ? "nominal" : "absolute";
        return step("cartridge-" + size + "um", kind + " cartridge " + size + " um " + stated, cartridge, removal,
                new StepService(OptionalDouble.of(15 / 60_000.0), NO_LIMIT,
                        new HeadLoss(TEN_L_PER_MIN, ratingM < 5e-6 ? 2 : 1, 7, 1.5, DATA_SHEET), NO_LIMIT,
                        OptionalDouble.of(50), OptionalDouble.of(HALF_YEAR_S), OptionalDouble.of(0.15),
                        ratingM <= 1e-6 ? 0.2 : ratingM <= 5e-6 ? 0.5 : 0.8,
                        List.of(task("Change the cartridge and disinfect the housing", HALF_YEAR_S, 20),
                                task("Read the pressure before and behind the filter", MONTH_S, 5)), DATA_SHEET));
    }

    public static TrainStep ceramic(Ceramic.Form form, boolean silver) {
        Removal removal = new Removal(range(2, 6), range(1, 4), range(4, 6), range(4, 6));
        String name = "ceramic " + (form == Ceramic.Form.CANDLE ? "candle" : "block") + (silver ? " with silver" : "");
        String id = form == Ceramic.Form.CANDLE ? "ceramic-candle" : "ceramic-block";
        return step(id, name, new Ceramic(form, silver, true), removal,
                new StepService(NO_LIMIT, OptionalDouble.of(0.03), HeadLoss.NONE, NO_LIMIT, NO_LIMIT,
                        OptionalDouble.of(YEAR_S), NO_LIMIT, 0.1,
                        List.of(task("Scrub the ceramic in clean water, look for cracks, check the seal", WEEK_S, 15),
                                task("Replace the ceramic", YEAR_S, 20)), DATA_SHEET));
    }

    public static TrainStep granularCarbon(double emptyBedContactS) {
        return step("carbon", "granular carbon", new GranularCarbon(emptyBedContactS), Removal.none(NO_CREDIT),
                new StepService(OptionalDouble.of(8 / 60_000.0), NO_LIMIT,
                        new HeadLoss(TEN_L_PER_MIN, 2, 7, 1.5, DATA_SHEET), NO_LIMIT, OptionalDouble.of(20),
                        OptionalDouble.of(HALF_YEAR_S), NO_LIMIT, 0.8,
                        List.of(task("Change the carbon; flush it after days without use", HALF_YEAR_S, 20)),
                        DATA_SHEET));
    }

    public static TrainStep slowSand(double velocityMPerS, double ripenedS) {
        Removal removal = new Removal(range(1, 3), range(0.5, 2), range(2, 4), range(2, 4));
        return step("slow-sand", "slow sand filter", new SlowSand(velocityMPerS, ripenedS, true), removal,
                new StepService(NO_LIMIT, NO_LIMIT, HeadLoss.NONE, NO_LIMIT, NO_LIMIT, NO_LIMIT, NO_LIMIT, 0.2,
                        List.of(task("Check the rate and that the sand is under water", DAY_S, 5),
                                task("Swirl or scrape the top when the rate falls, then let it ripen again",
                                        3 * MONTH_S, 60)), DATA_SHEET));
    }

    public static TrainStep membrane(Membrane.Kind kind) {
        boolean micro = kind == Membrane.Kind.MICROFILTRATION;
        Removal removal = micro ? new Removal(range(2, 4), range(0, 4), range(2, 6), range(2, 6))
                : new Removal(range(3, 6), range(3, 6), range(3, 6), range(3, 6));
        boolean tight = kind.harmedByChlorine();
        String name = switch (kind) {
            case MICROFILTRATION -> "microfiltration membrane";
            case ULTRAFILTRATION -> "ultrafiltration membrane";
            case NANOFILTRATION -> "nanofiltration membrane";
            case REVERSE_OSMOSIS -> "reverse osmosis membrane";
        };
        return step(name.replace(' ', '-'), name, new Membrane(kind, true), removal,
                new StepService(tight ? NO_LIMIT : OptionalDouble.of(5 / 60_000.0),
                        tight ? OptionalDouble.of(0.1) : NO_LIMIT,
                        tight ? HeadLoss.NONE : new HeadLoss(2 / 60_000.0, 1, 5, 1, DATA_SHEET),
                        tight ? OptionalDouble.of(30) : NO_LIMIT, NO_LIMIT, OptionalDouble.of(2 * YEAR_S), NO_LIMIT,
                        0.05, List.of(task("Backwash or rinse the membrane", WEEK_S, 10),
                                task("Test the membrane for leaks as its maker says", HALF_YEAR_S, 30)), DATA_SHEET));
    }

    public static TrainStep uvLamp(double uvDoseMjPerCm2) {
        Removal removal = new Removal(range(3, 5), range(2, 5), range(3, 5), range(3, 5));
        return step("uv", "UV lamp", new UvLamp(uvDoseMjPerCm2, UvLamp.Basis.DOSE_TABLE, true), removal,
                new StepService(OptionalDouble.of(15 / 60_000.0), NO_LIMIT,
                        new HeadLoss(TEN_L_PER_MIN, 0.3, 0.3, 2, DATA_SHEET), NO_LIMIT, NO_LIMIT,
                        OptionalDouble.of(YEAR_S), NO_LIMIT, 1,
                        List.of(task("Look at the lamp's light and alarm", WEEK_S, 2),
                                task("Wipe the sleeve (power off; mains work is for a licensed electrician)",
                                        3 * MONTH_S, 20),
                                task("Change the lamp", YEAR_S, 30)), DATA_SHEET));
    }

    /** Boiling in pots; its removal is that of the class of technology. */
    public static TrainStep boil(double altitudeM, Boiling.Agency agency, double heldS) {
        Removal removal = new Removal(range(6, 9), range(6, 9), range(6, 9), range(6, 9));
        return step("boil", "boiling", new Boil(altitudeM, agency, heldS), removal,
                outside(1, OptionalDouble.of(0.03), task("Boil, cool covered, clean the pot", DAY_S, 30)));
    }

    /** Bottles of 2 L, out for as long as the sky asks. */
    public static TrainStep solarBottles(SolarDisinfection.Sky sky) {
        Removal removal = new Removal(range(3, 5), range(2, 4), range(2, 4), range(2, 4));
        double bottleM3 = SolarDisinfection.MAX_BOTTLE_M3;
        return step("solar", "solar disinfection",
                new SolarBottles(bottleM3, sky, SolarDisinfection.of(bottleM3, sky, 0).durationS()), removal,
                outside(1, OptionalDouble.of(0.04), task("Fill, lay out and take in the bottles", DAY_S, 20),
                        task("Replace scratched bottles", HALF_YEAR_S, 10)));
    }

    /** Chlorine with a contact time; the residual is empty until someone measures or models it. */
    public static TrainStep chlorination(OptionalDouble residualMgPerL, double contactS, Baffling baffling) {
        Removal removal = new Removal(range(3, 6), range(3, 6), range(3, 5), range(0, 1));
        return step("chlorine", "chlorine", new Chlorination(residualMgPerL, contactS, baffling, false), removal,
                outside(1, NO_LIMIT, task("Measure free chlorine at the tap and write it down", DAY_S, 5),
                        task("Dose, stir and wait; keep the product cool, dark and away from acids and other cleaners",
                                WEEK_S, 15)));
    }

    private static TrainStep step(String id, String name, Treatment treatment, Removal removal, StepService service) {
        return new TrainStep(id, name, treatment, removal, service, Running.NEW);
    }

    private static StepService outside(double turbidityLeftRatio, OptionalDouble dailyLimitM3, UpkeepTask... tasks) {
        return new StepService(NO_LIMIT, dailyLimitM3, HeadLoss.NONE, NO_LIMIT, NO_LIMIT, NO_LIMIT, NO_LIMIT,
                turbidityLeftRatio, List.of(tasks), DATA_SHEET);
    }

    private static LogRange range(double low, double high) {
        return new LogRange(low, high, TECHNOLOGY);
    }

    private static UpkeepTask task(String text, double intervalS, double minutes) {
        return new UpkeepTask(text, intervalS, minutes * 60, UPKEEP);
    }
}

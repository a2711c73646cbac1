package org.roofspring.treatment.train;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import org.roofspring.treatment.LogRange;
import org.roofspring.treatment.LogReductions;
import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.Source;
import org.roofspring.treatment.disinfection.Baffling;
import org.roofspring.treatment.disinfection.Boiling;
import org.roofspring.treatment.disinfection.SolarDisinfection;
import org.roofspring.treatment.disinfection.UvDoseTable;

/** Credits of steps and trains against their sources and the stated rules. */
class TrainPublishedTest {
    private static final WaterState CLEAR = WaterState.of(0.8, 7, 20, 0.9);
    private static final TrainFlow FLOW = new TrainFlow(10 / 60_000.0, 0.02, 0.06, OptionalDouble.empty());

    private static TrainResult run(WaterState source, TrainStep... steps) {
        return TrainEvaluator.evaluate(List.of(steps), source, FLOW);
    }

    /** -log10(f 10^-L + 1 - f): 5 % out caps at 1.3 log (formula; -log10 0.05 = 1.301). */
    @ParameterizedTest
    @CsvSource({"20,0.05,1.30103", "4,0.05,1.30021", "3,0.01,1.95900", "6,0,6", "6,1,0", "0,0.3,0"})
    void timeOut(double log, double out, double left) {
        assertEquals(left, Availability.effectiveLog(log, out), 5e-6);
    }

    /**
     * A 5 or 20 um cartridge earns nothing; a nominal 1 um neither, since it may pass 20 to 30 % of such particles (CDC
     * 2004, READ); absolute ratings follow the sizes of PMC10961906 Table 3 (READ).
     */
    @ParameterizedTest
    @CsvSource({"20e-6,NOMINAL,false,false,false", "5e-6,NOMINAL,false,false,false", "5e-6,ABSOLUTE,false,false,false",
        "20e-6,ABSOLUTE,false,false,false", "1e-6,NOMINAL,false,false,false", "3e-6,ABSOLUTE,false,true,false",
        "1e-6,ABSOLUTE,false,true,true", "0.5e-6,ABSOLUTE,false,true,true", "0.2e-6,ABSOLUTE,true,true,true"})
    void cartridgeBySize(double ratingM, Cartridge.Rating rating, boolean bacteria, boolean giardia, boolean crypto) {
        for (Cartridge.Media media : Cartridge.Media.values()) {
            LogReductions total = run(CLEAR, StepLibrary.cartridge(media, ratingM, rating)).total();
            assertEquals(bacteria, total.bacteria() > 0);
            assertEquals(giardia, total.giardia() > 0);
            assertEquals(crypto, total.cryptosporidium() > 0);
            assertEquals(0, total.viruses());
        }
    }

    /** The two sources of a lamp's credit: the chosen one is named, and so is the other. */
    @Test
    void lampNamesTheChosenSource() {
        StepResult byTable = run(CLEAR, StepLibrary.uvLamp(40)).steps().get(0);
        assertEquals(new LogReductions(3, 0.5, 4, 4), byTable.earned());
        Credit virus = byTable.credits().get(PathogenGroup.VIRUSES);
        assertEquals(UvDoseTable.SOURCE, virus.source());
        assertEquals(2, virus.alternative().orElseThrow().log());
        assertTrue(virus.text().startsWith("0.5 log by US EPA 2006") && virus.text().contains("not used: 2.0 log"));

        TrainStep lamp = StepLibrary.uvLamp(40);
        TrainStep byClass = new TrainStep("uv", "UV lamp", new UvLamp(40, UvLamp.Basis.TECHNOLOGY_CLASS, true),
                lamp.removal(), lamp.service(), lamp.running());
        assertEquals(new LogReductions(3, 2, 3, 3), run(CLEAR, byClass).total());
        TrainStep lower = new TrainStep("uv", "UV lamp", new UvLamp(40, UvLamp.Basis.LOWER_OF_BOTH, true),
                lamp.removal(), lamp.service(), lamp.running());
        assertEquals(new LogReductions(3, 0.5, 3, 3), run(CLEAR, lower).total());
        assertEquals(new LogReductions(0, 0, 4, 4), run(CLEAR, StepLibrary.uvLamp(30)).total(),
                "no class credit for bacteria below 40 mJ/cm2");
    }

    /** Solar: echovirus 1.5 log and adenovirus resistant (PMC4702646, READ) beside 2 log by class (MEM). */
    @Test
    void sunOnViruses() {
        StepResult sun = run(CLEAR, StepLibrary.solarBottles(
                SolarDisinfection.Sky.CLEAR)).steps().get(0);
        assertEquals(1.5, sun.earned().viruses());
        assertEquals(2, sun.credits().get(PathogenGroup.VIRUSES).alternative().orElseThrow().log());
    }

    @Test
    void chlorineByResidualAndContact() {
        StepResult good = run(CLEAR, StepLibrary.chlorination(OptionalDouble.of(0.5), 1800, Baffling.STANDING)).steps()
                .get(0);
        assertEquals(3, good.earned().bacteria());
        assertEquals(4, good.earned().viruses());
        assertEquals(3 * 15 / 54.0, good.earned().giardia(), 1e-12);
        assertEquals(0, good.earned().cryptosporidium());
        assertEquals(0.5, good.leaving().freeChlorineMgPerL());
        StepResult dosedOnly = run(CLEAR, StepLibrary.chlorination(OptionalDouble.empty(), 1800, Baffling.STANDING))
                .steps().get(0);
        assertEquals(LogReductions.NONE, dosedOnly.earned());
        assertTrue(dosedOnly.failed().get(0).text().contains("a dose is not a residual"));
        StepResult concrete = run(WaterState.of(0.8, 9.4, 20, 0.9),
                StepLibrary.chlorination(OptionalDouble.of(1), 36_000, Baffling.STANDING)).steps().get(0);
        assertEquals(LogReductions.NONE, concrete.earned());
        assertEquals("chlorine.ph", concrete.failed().get(0).code());
    }

    /** Each of these breaks one condition, and the step then earns nothing. */
    @Test
    void failedConditionsEarnNothing() {
        assertFailed("uv.turbidity", run(WaterState.of(1.1, 7, 20, 0.9), StepLibrary.uvLamp(40)));
        assertFailed("uv.transmittance", run(WaterState.of(0.5, 7, 20, 0.7), StepLibrary.uvLamp(40)));
        TrainStep lamp = StepLibrary.uvLamp(40);
        assertFailed("uv.power", run(CLEAR, new TrainStep("uv", "UV lamp",
                new UvLamp(40, UvLamp.Basis.DOSE_TABLE, false), lamp.removal(), lamp.service(), Running.NEW)));
        assertFailed("service.age", run(CLEAR, lamp.withRunning(new Running(0, 0, 400 * 86_400.0,
                OptionalDouble.empty()))));
        assertFailed("service.flow", TrainEvaluator.evaluate(List.of(lamp), CLEAR,
                new TrainFlow(20 / 60_000.0, 0.02, 0, OptionalDouble.empty())));
        assertFailed("solar.turbidity", run(WaterState.of(30, 7, 20, 0.9), StepLibrary.solarBottles(
                SolarDisinfection.Sky.CLOUDY)));
        assertFailed("boil.time", run(CLEAR, StepLibrary.boil(1600, Boiling.Agency.EPA, 60)));
        assertFailed("chlorine.temperature", run(WaterState.of(0.5, 7, 0.2, 0.9),
                StepLibrary.chlorination(OptionalDouble.of(1), 36_000, Baffling.STANDING)));
        assertFailed("chlorine.turbidity", run(WaterState.of(6, 7, 20, 0.9),
                StepLibrary.chlorination(OptionalDouble.of(1), 36_000, Baffling.STANDING)));
        assertFailed("sand.ripened", run(CLEAR, StepLibrary.slowSand(0.2 / 3600, 86_400)));
        assertFailed("service.day", TrainEvaluator.evaluate(List.of(StepLibrary.boil(0, Boiling.Agency.CDC, 60)),
                CLEAR, new TrainFlow(0, 0.2, 0, OptionalDouble.empty())));
        assertFailed("service.head", TrainEvaluator.evaluate(
                List.of(StepLibrary.membrane(Membrane.Kind.REVERSE_OSMOSIS)), CLEAR,
                new TrainFlow(0, 0.05, 0, OptionalDouble.of(10))));
    }

    private static void assertFailed(String code, TrainResult result) {
        StepResult step = result.steps().get(0);
        assertEquals(List.of(code), step.failed().stream().map(Condition::code).toList());
        assertEquals(LogReductions.NONE, step.earned());
        assertEquals(LogReductions.NONE, result.total());
        assertTrue(step.interrupted());
    }

    @Test
    void sameMechanismCountsOnce() {
        TrainStep absolute = StepLibrary.cartridge(Cartridge.Media.PLEATED, 1e-6, Cartridge.Rating.ABSOLUTE);
        TrainStep candle = StepLibrary.ceramic(Ceramic.Form.CANDLE, false);
        TrainResult both = run(CLEAR, absolute, candle);
        assertEquals(new LogReductions(2, 1, 4, 4), both.total(), "the ceramic alone, not 6 log of protozoa");
        assertEquals(1, both.steps().get(1).notes().size());
        assertEquals(new LogReductions(0, 0, 2, 2), both.steps().get(0).cumulative());
        LogReductions lampAndSun = run(CLEAR, StepLibrary.uvLamp(186), StepLibrary.solarBottles(
                SolarDisinfection.Sky.CLEAR)).total();
        assertEquals(4, lampAndSun.viruses());
    }

    @Test
    void differentMechanismsAddUpToTheCap() {
        TrainResult result = run(CLEAR, StepLibrary.ceramic(Ceramic.Form.CANDLE, false), StepLibrary.uvLamp(40),
                StepLibrary.boil(0, Boiling.Agency.CDC, 60));
        assertEquals(new LogReductions(9, 7.5, 9, 9), result.total());
        CreditCaps low = new CreditCaps(2, 3, Source.assumed("test"));
        assertEquals(new LogReductions(3, 3, 3, 3), TrainEvaluator.evaluate(
                result.steps().stream().map(StepResult::step).toList(), CLEAR, FLOW, low).total());
    }

    @Test
    void waterGetsClearerAlongTheTrainUntilSomeoneMeasures() {
        TrainStep coarse = StepLibrary.cartridge(Cartridge.Media.STRING_WOUND, 20e-6, Cartridge.Rating.NOMINAL);
        TrainStep fine = StepLibrary.cartridge(Cartridge.Media.PLEATED, 1e-6, Cartridge.Rating.ABSOLUTE);
        TrainStep lamp = StepLibrary.uvLamp(40);
        WaterState cloudy = WaterState.of(5, 7, 20, 0.9);
        TrainResult result = run(cloudy, coarse, fine, lamp);
        assertEquals(5 * 0.8 * 0.2, result.steps().get(2).entering().turbidityNtu(), 1e-12);
        assertEquals(3, result.total().bacteria());
        TrainStep measured = lamp.withRunning(new Running(0, 0, 0, OptionalDouble.of(3)));
        assertEquals(0, run(cloudy, coarse, fine, measured).total().bacteria());
    }

    @Test
    void headFlowLifeAndStore() {
        HeadLoss loss = new HeadLoss(1e-4, 1, 4, 2, Source.assumed("test"));
        assertEquals(4, loss.cleanHeadM(2e-4), 1e-12);
        assertEquals(1, loss.fouledHeadM(0.5e-4), 1e-12);
        assertEquals(0, HeadLoss.NONE.fouledHeadM(0.5));
        TrainStep cartridge = StepLibrary.cartridge(Cartridge.Media.STRING_WOUND, 5e-6, Cartridge.Rating.NOMINAL);
        TrainFlow flow = new TrainFlow(10 / 60_000.0, 0.4, 1.2, OptionalDouble.of(10));
        TrainResult result = TrainEvaluator.evaluate(List.of(cartridge, StepLibrary.uvLamp(40)), CLEAR, flow);
        assertEquals(1.3, result.cleanHeadLossM(), 1e-12);
        assertEquals(7.3, result.fouledHeadLossM(), 1e-12);
        assertEquals(2.7, result.residualHeadM().orElseThrow(), 1e-12);
        assertEquals(3, result.storedDays().orElseThrow(), 1e-12);
        assertEquals(15 / 60_000.0, result.flowLimitM3PerS().orElseThrow(), 1e-12);
        // 50 m3 at 0.4 m3/d is 125 days, sooner than half a year.
        assertEquals(50, result.steps().get(0).untilChangeM3().orElseThrow(), 1e-12);
        assertEquals(125 * 86_400.0, result.steps().get(0).untilChangeS().orElseThrow(), 1e-6);
        // 20 NTU leaves 10 NTU, about 10 mg/L, on the filter: 0.15 kg are full after 15 m3.
        assertEquals(15, cartridge.service().volumeUntilChangeM3(20).orElseThrow(), 1e-9);
        assertTrue(result.weeklyWorkS() > 0 && result.weeklyTasks().size() == 1);
        TrainResult low = TrainEvaluator.evaluate(List.of(cartridge), CLEAR,
                new TrainFlow(10 / 60_000.0, 0.4, 0, OptionalDouble.of(3)));
        assertEquals("train.head", low.cautions().get(0).code());
    }

    /** WHO Guidelines for Drinking-water Quality, 4th ed, Table 7.8, baseline and maximum (MEM, from memory). */
    @ParameterizedTest
    @CsvSource({"ceramic-candle,2,6,1,4,4,6", "ceramic-block,2,6,1,4,4,6", "microfiltration-membrane,2,4,0,4,2,6",
        "ultrafiltration-membrane,3,6,3,6,3,6", "nanofiltration-membrane,3,6,3,6,3,6",
        "reverse-osmosis-membrane,3,6,3,6,3,6", "slow-sand,1,3,0.5,2,2,4", "solar,3,5,2,4,2,4", "uv,3,5,2,5,3,5",
        "boil,6,9,6,9,6,9", "settling,0,0.5,0,0.5,0,1", "chlorine,3,6,3,6,3,5"})
    void rangesByTechnology(String id, double b0, double b1, double v0, double v1, double p0, double p1) {
        TrainStep step = StepLibrary.palette().stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
        LogRange bacteria = step.removal().bacteria();
        LogRange viruses = step.removal().viruses();
        LogRange giardia = step.removal().giardia();
        assertEquals(List.of(b0, b1, v0, v1, p0, p1), List.of(bacteria.low(), bacteria.high(), viruses.low(),
                viruses.high(), giardia.low(), giardia.high()));
        LogRange crypto = step.removal().cryptosporidium();
        assertEquals(id.equals("chlorine") ? List.of(0.0, 1.0) : List.of(p0, p1), List.of(crypto.low(), crypto.high()));
    }

    /** Common practice, no source: string-wound cartridges are changed about twice a year. */
    @Test
    void cartridgesTwiceAYear() {
        double lifeS = StepLibrary.cartridge(Cartridge.Media.STRING_WOUND, 5e-6, Cartridge.Rating.NOMINAL).service()
                .lifeS().orElseThrow();
        assertEquals(182.6 * 86_400, lifeS, 86_400);
    }

    /** Every default that was not read in its source carries a mark that the user sees. */
    @Test
    void defaultsAreMarked() {
        for (TrainStep step : StepLibrary.palette()) {
            for (PathogenGroup group : PathogenGroup.values()) {
                Source source = step.removal().of(group).source();
                assertTrue(source.standing() != Source.Standing.READ || step.removal().of(group).high() == 0);
                assertFalse(source.text().equals(source.citation()) && source.needsVerifying());
            }
            assertTrue(step.service().source().needsVerifying());
        }
        assertEquals(StepLibrary.palette().size(),
                StepLibrary.palette().stream().map(TrainStep::id).distinct().count());
    }

    @ParameterizedTest
    @EnumSource(Membrane.Kind.class)
    void membranesNeedALeakTest(Membrane.Kind kind) {
        TrainStep step = StepLibrary.membrane(kind);
        TrainStep untested = new TrainStep(step.id(), step.name(), new Membrane(kind, false), step.removal(),
                step.service(), step.running());
        TrainFlow small = new TrainFlow(1 / 60_000.0, 0.02, 0, OptionalDouble.of(40));
        assertTrue(TrainEvaluator.evaluate(List.of(step), CLEAR, small).total().bacteria() > 0);
        assertEquals(LogReductions.NONE, TrainEvaluator.evaluate(List.of(untested), CLEAR, small).total());
    }
}

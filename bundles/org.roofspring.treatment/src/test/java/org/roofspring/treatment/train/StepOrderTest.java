package org.roofspring.treatment.train;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import org.roofspring.treatment.Caution;
import org.roofspring.treatment.disinfection.Baffling;
import org.roofspring.treatment.disinfection.Boiling;
import org.roofspring.treatment.disinfection.SolarDisinfection;

/** Mistakes in the order of steps, and the same steps in the right order. */
class StepOrderTest {
    private static final TrainStep CARBON = StepLibrary.granularCarbon(120);
    private static final TrainStep SUN = StepLibrary.solarBottles(SolarDisinfection.Sky.CLEAR);
    private static final TrainStep CHLORINE = StepLibrary.chlorination(OptionalDouble.of(1), 1800, Baffling.STANDING);
    private static final TrainStep SILVER = StepLibrary.ceramic(Ceramic.Form.CANDLE, true);
    private static final TrainStep PLAIN = StepLibrary.ceramic(Ceramic.Form.CANDLE, false);
    private static final TrainStep LAMP = StepLibrary.uvLamp(40);
    private static final TrainStep FINE = StepLibrary.cartridge(Cartridge.Media.STRING_WOUND, 5e-6,
            Cartridge.Rating.NOMINAL);
    private static final TrainStep COARSE = StepLibrary.cartridge(Cartridge.Media.STRING_WOUND, 20e-6,
            Cartridge.Rating.NOMINAL);
    private static final TrainStep OSMOSIS = StepLibrary.membrane(Membrane.Kind.REVERSE_OSMOSIS);
    private static final TrainStep SAND = StepLibrary.slowSand(0.2 / 3600, 1e7);
    private static final TrainStep BOIL = StepLibrary.boil(0, Boiling.Agency.CDC, 60);

    private static List<String> codes(TrainStep... steps) {
        return StepOrder.cautions(Arrays.asList(steps)).stream().map(Caution::code).toList();
    }

    @Test
    void mistakes() {
        assertEquals(List.of("order.sun-after-carbon"), codes(CARBON, SUN));
        assertEquals(List.of(), codes(SUN, CARBON));
        assertEquals(List.of("order.chlorine-before-silver"), codes(CHLORINE, SILVER));
        assertEquals(List.of(), codes(SILVER, CHLORINE));
        assertEquals(List.of(), codes(CHLORINE, PLAIN));
        assertEquals(List.of("order.uv-before-sediment"), codes(LAMP, FINE));
        assertEquals(List.of(), codes(FINE, LAMP));
        assertEquals(List.of("order.carbon-after-chlorine"), codes(CHLORINE, CARBON));
        assertEquals(List.of(), codes(CARBON, CHLORINE));
        assertEquals(List.of("order.chlorine-before-membrane"), codes(CHLORINE, OSMOSIS));
        assertEquals(List.of("order.carbon-after-chlorine"), codes(CHLORINE, CARBON, OSMOSIS));
        assertEquals(List.of("order.chlorine-before-sand"), codes(CHLORINE, SAND));
        assertEquals(List.of("order.finer-first"), codes(FINE, COARSE));
        assertEquals(List.of(), codes(COARSE, FINE));
        assertEquals(List.of("order.filter-after-boiling"), codes(BOIL, CARBON));
        assertEquals(List.of(), codes(BOIL, CHLORINE));
        assertEquals(List.of("order.inlet-not-first"), codes(FINE, StepLibrary.firstFlush(1)));
        assertEquals(List.of(), codes());
    }
}

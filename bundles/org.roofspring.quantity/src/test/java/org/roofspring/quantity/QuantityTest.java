package org.roofspring.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityTest {

    @ParameterizedTest
    @CsvSource({ "41.8mm,LENGTH,0.0418", "1.2L/s,FLOW,0.0012", "400L/d,FLOW,4.6296296296296296e-6",
        "1 bar,PRESSURE,100000", "12 m,PRESSURE,117679.8", "12 m(head),PRESSURE,117679.8", "100 ft2,AREA,9.290304",
        "1 galUS,VOLUME,0.003785411784", "1 galImp,VOLUME,0.00454609", "68degF,TEMPERATURE,20", "0degC,TEMPERATURE,0",
        "65%,RATIO,0.65", "0.65,RATIO,0.65", "3 m³,VOLUME,3", "2 h,DURATION,7200", "1psi,PRESSURE,6894.757293168361",
        "1.2kg/L,DENSITY,1200", "-1.5e1 m,LENGTH,-15", ".5 m,LENGTH,0.5", "100 gpm(US),FLOW,0.00630901964" })
    void readsNumberAndUnit(String text, Dimension dimension, double si) {
        assertEquals(si, Quantity.parse(text, dimension).si(), Math.max(Math.abs(si) * 1e-14, 1e-14), text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = { "12|LENGTH|has no unit", "12 parsec|LENGTH|not a known unit",
        "12 L|LENGTH|is a volume, but a length is needed", "abc|AREA|not a number", "''|AREA|not a number",
        "12,5 m|LENGTH|comma", "1e999 m|LENGTH|too large", "5 gal|VOLUME|which gallon", "5 m 5|LENGTH|not a known unit",
        "NaN m|LENGTH|not a number" })
    void refusesWithOneSentence(String text, Dimension dimension, String part) {
        String message = assertThrows(QuantityException.class, () -> Quantity.parse(text, dimension)).getMessage();
        assertTrue(message.contains(part), message);
        assertEquals(1, message.lines().count());
    }

    @ParameterizedTest
    @EnumSource(Dimension.class)
    void everyDimensionHasABaseUnitAndTruthfulHelp(Dimension dimension) {
        assertEquals(dimension, Units.si(dimension).dimension());
        for (String symbol : dimension.acceptedUnits().split(", ")) {
            if (!symbol.equals("a bare number")) {
                assertEquals(dimension, Units.find(symbol, dimension).orElseThrow(() -> new AssertionError(symbol)).dimension());
            }
        }
    }

    @Test
    void everyUnitConvertsThereAndBack() {
        Units.catalogue().values().forEach(unit -> assertEquals(12.34, unit.fromSi(unit.toSi(12.34)), 1e-11, unit.symbol()));
    }

    @Test
    void textSurvivesARoundTrip() {
        Units.catalogue().values().forEach(unit -> {
            for (double value : new double[] { 0, 1, -3, 0.1, 41.8, 1e-9, 123456789.123, 1e22, Double.MIN_VALUE }) {
                Quantity quantity = Quantity.of(value, unit);
                assertEquals(quantity, Quantity.valueOf(quantity.toString()));
            }
        });
    }

    @Test
    void refusesWhatIsNotFinite() {
        assertThrows(QuantityException.class, () -> Quantity.of(Double.NaN));
        assertThrows(QuantityException.class, () -> Quantity.of(Double.POSITIVE_INFINITY, Units.M));
    }

    @Test
    void otherDimensionDoesNotConvert() {
        assertThrows(QuantityException.class, () -> Quantity.of(1, Units.M).in(Units.L));
        assertThrows(QuantityException.class, () -> Quantity.of(1, Units.M).compareTo(Quantity.of(1, Units.L)));
    }
}

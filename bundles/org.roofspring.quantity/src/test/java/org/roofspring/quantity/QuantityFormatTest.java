package org.roofspring.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityFormatTest {

    @ParameterizedTest
    @CsvSource({ "METRIC,350 m2,350 m²", "METRIC,12345.678 L,12 346 L", "METRIC,0.0123456 m3/s,12.35 L/s",
        "METRIC,0 mm,0 mm", "METRIC,-1.5 m,−1.5 m", "METRIC,0.774976,0.775", "METRIC,12.5 %,12.5 %",
        "US_CUSTOMARY,1 m3,264.2 galUS", "IMPERIAL,1 m3,220 galImp", "US_CUSTOMARY,20 degC,68 °F",
        "METRIC,2000 galUS,7 571 L", "METRIC,3 1/h,3 /h", "METRIC,1.5e-7 m,1.5e-7 m", "METRIC,12 cur/m3,12 KES/m³",
        "METRIC,0.5,0.5", "METRIC,999.95 m,1 000 m" })
    void shows(UnitSystem system, String quantity, String expected) {
        String shown = new QuantityFormat(system, "KES", 4).format(Quantity.valueOf(quantity));
        assertEquals(expected, shown.replace('\u202f', ' ').replace('\u00a0', ' '));
    }
}

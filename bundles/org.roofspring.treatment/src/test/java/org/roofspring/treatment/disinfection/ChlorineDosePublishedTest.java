package org.roofspring.treatment.disinfection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.roofspring.treatment.disinfection.ChlorineProduct.Basis;
import org.roofspring.treatment.disinfection.ChlorineProduct.Form;

/** Dosing rows that guidance prints, in mL, g and drops. */
class ChlorineDosePublishedTest {

    /** NSW Private Water Supply Guidelines, 12.5 % liquid, mL (READ). */
    @ParameterizedTest
    @CsvSource({"1,1,8", "1,2,16", "1,5,40", "5,1,40", "5,2,80", "5,5,200", "10,1,80", "10,2,160", "10,5,400",
        "20,1,160", "20,2,320", "20,5,800"})
    void liquidByVolumeAsNewSouthWalesPrints(double waterM3, double doseMgPerL, double millilitres) {
        ChlorineDose dose = ChlorineDose.of(waterM3, doseMgPerL, ChlorineProduct.of(Form.LIQUID, 0.125));
        assertEquals(millilitres, dose.productVolumeM3().orElseThrow() * 1e6, 1e-9);
        assertTrue(dose.productMassKg().isEmpty());
    }

    /** enHealth, Guidance on Use of Rainwater Tanks 5.2 (READ): 40 mL of 12.5 % or 7 g of 75 % in 1000 L. */
    @Test
    void tankDoseOfEnHealth() {
        assertEquals(5.00, ChlorineDose.fromLiquid(1, 40e-6, ChlorineProduct.of(Form.LIQUID, 0.125)), 1e-12);
        assertEquals(5.25, ChlorineDose.fromMass(1, 0.007, 0.75), 1e-12);
        ChlorineDose granules = ChlorineDose.of(1, 5, ChlorineProduct.of(Form.GRANULES, 0.75));
        assertEquals(7, granules.productMassKg().orElseThrow() * 1000, 0.5, "the printed 7 g is rounded");
        assertTrue(granules.productVolumeM3().isEmpty() && granules.drops().isEmpty());
    }

    /** Canterbury community and public health (READ): 67 mL of 5 % bleach in 1000 L; the mg/L is computed (CALC). */
    @Test
    void bleachOfCanterbury() {
        assertEquals(3.35, ChlorineDose.fromLiquid(1, 67e-6, ChlorineProduct.of(Form.LIQUID, 0.05)), 1e-12);
    }

    /**
     * EPA emergency disinfection, 8.25 %, 6 drops a US gallon (as quoted by a local text, READ-2): about 6.5 mg/L with
     * drops of 0.05 mL (CALC).
     */
    @Test
    void dropsOfEpa() {
        double gallonM3 = 3.785411784e-3;
        ChlorineProduct bleach = ChlorineProduct.of(Form.LIQUID, 0.0825);
        double doseMgPerL = ChlorineDose.fromLiquid(gallonM3, 6 * 0.05e-6, bleach);
        assertEquals(6.54, doseMgPerL, 0.005);
        assertEquals(6, ChlorineDose.of(gallonM3, doseMgPerL, bleach).drops().orElseThrow(), 1e-9);
        assertEquals(8.25, ChlorineDose.fromLiquid(0.001, 2 * 0.05e-6, bleach), 1e-9);
    }

    /** EPA 2017 (MEM): 6 %, 8 drops a US gallon. With the 8.25 % rule it must come to nearly the same dose. */
    @Test
    void bothEpaRulesAgree() {
        double gallonM3 = 3.785411784e-3;
        double six = ChlorineDose.fromLiquid(gallonM3, 8 * 0.05e-6, ChlorineProduct.of(Form.LIQUID, 0.06));
        double eight = ChlorineDose.fromLiquid(gallonM3, 6 * 0.05e-6, ChlorineProduct.of(Form.LIQUID, 0.0825));
        assertEquals(6.34, six, 0.005);
        assertEquals(eight, six, 0.04 * eight);
    }

    @Test
    void cautionsStandBesideADose() {
        assertEquals(4, DisinfectionCautions.chlorine(6, false).size());
        assertEquals(2, DisinfectionCautions.chlorine(5, true).size());
        assertTrue(DisinfectionCautions.chlorine(5, true).get(0).text().contains("acid"));
    }

    /** Common practice, no source: one or two drops of 5 % bleach a litre is 2.5 to 5 mg/L. */
    @Test
    void oneOrTwoDropsALitre() {
        ChlorineProduct bleach = ChlorineProduct.of(Form.LIQUID, 0.05);
        assertEquals(1, ChlorineDose.of(0.001, 2.5, bleach).drops().orElseThrow(), 1e-9);
        assertEquals(2, ChlorineDose.of(0.001, 5, bleach).drops().orElseThrow(), 1e-9);
    }

    @Test
    void tabletsByTheirMass() {
        ChlorineDose dose = ChlorineDose.of(10, 5, ChlorineProduct.of(Form.TABLETS, 0.5));
        assertEquals(5, dose.tablets(0.020).orElseThrow(), 1e-12);
        assertTrue(ChlorineDose.of(10, 5, ChlorineProduct.of(Form.LIQUID, 0.5)).tablets(0.020).isEmpty());
    }

    @Test
    void densityCountsByWeightOnly() {
        ChlorineProduct byWeight = new ChlorineProduct(Form.LIQUID, 0.125, Basis.WEIGHT_PER_WEIGHT, 1200);
        ChlorineDose dose = ChlorineDose.of(1, 5, byWeight);
        assertEquals(0.040, dose.productMassKg().orElseThrow(), 1e-15);
        assertEquals(40.0 / 1.2, dose.productVolumeM3().orElseThrow() * 1e6, 1e-9);
        assertEquals(ChlorineDose.of(1, 5, new ChlorineProduct(Form.LIQUID, 0.125, Basis.WEIGHT_PER_VOLUME, 1100)),
                ChlorineDose.of(1, 5, new ChlorineProduct(Form.LIQUID, 0.125, Basis.WEIGHT_PER_VOLUME, 1300)));
    }

    @Test
    void refusesWithOneSentence() {
        String message = assertThrows(IllegalArgumentException.class,
                () -> ChlorineDose.of(0, 5, ChlorineProduct.of(Form.LIQUID, 0.125))).getMessage();
        assertEquals("water volume (waterVolumeM3) must be above 0 and at most 1000000 m3, not 0", message);
        assertThrows(IllegalArgumentException.class,
                () -> new ChlorineProduct(Form.GRANULES, 0.65, Basis.WEIGHT_PER_VOLUME, 1200));
        assertThrows(IllegalArgumentException.class, () -> ChlorineProduct.of(Form.LIQUID, 12.5));
        assertThrows(IllegalArgumentException.class,
                () -> ChlorineDose.fromLiquid(1, 1e-6, ChlorineProduct.of(Form.GRANULES, 0.65)));
    }
}

package org.roofspring.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hipparchus.dfp.Dfp;
import org.hipparchus.dfp.DfpField;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Colebrook-White against a solution in 40 decimal digits, and what must hold for any pipe. */
class PipeFrictionPropertyTest {
    private static final DfpField FORTY_DIGITS = new DfpField(40);

    /** Newton's method on x + 2 log10(a + b x) = 0, x = 1/sqrt(f), in 40 digits. */
    private static double colebrookInFortyDigits(double reynolds, double relativeRoughness) {
        Dfp a = FORTY_DIGITS.newDfp(relativeRoughness).divide(FORTY_DIGITS.newDfp("3.7"));
        Dfp b = FORTY_DIGITS.newDfp("2.51").divide(FORTY_DIGITS.newDfp(reynolds));
        Dfp c = FORTY_DIGITS.newDfp(2).divide(FORTY_DIGITS.getLn10());
        Dfp x = FORTY_DIGITS.newDfp(8);
        for (int i = 0; i < 7; i++) {
            Dfp inside = a.add(b.multiply(x));
            Dfp slope = c.multiply(b).divide(inside).add(1);
            x = x.subtract(x.add(c.multiply(inside.log())).divide(slope));
        }
        return FORTY_DIGITS.getOne().divide(x.multiply(x)).toDouble();
    }

    @Property(tries = 120)
    void colebrookIsSolvedToTwelveDigits(@ForAll @Scale(15) @DoubleRange(min = 0, max = 1) double reynoldsShare,
            @ForAll @Scale(15) @DoubleRange(min = 0, max = 0.05) double relativeRoughness) {
        double reynolds = Math.min(1e8, 4e3 * Math.pow(2.5e4, reynoldsShare));
        assertSame(reynolds, relativeRoughness);
        assertSame(reynolds, relativeRoughness * relativeRoughness * relativeRoughness);
    }

    @Example
    void colebrookIsSolvedToTwelveDigitsOnTheEdges() {
        for (double reynolds : new double[] {4e3, 4001, 1e4, 1e5, 1e6, 1e7, 1e8}) {
            for (double roughness : new double[] {0, Double.MIN_VALUE, 1e-12, 1e-6, 1e-5, 1e-4, 1e-3, 1e-2, 0.05}) {
                assertSame(reynolds, roughness);
            }
        }
    }

    private static void assertSame(double reynolds, double roughness) {
        double precise = colebrookInFortyDigits(reynolds, roughness);
        assertEquals(precise, PipeFriction.colebrookWhite(reynolds, roughness), 1e-12 * precise,
                "Re " + reynolds + ", e/D " + roughness);
    }

    @Property
    void headRisesWithFlowThroughAllRegimes(@ForAll @Scale(15) @DoubleRange(min = 1, max = 1e5) double reynolds,
            @ForAll @Scale(15) @DoubleRange(min = 0, max = 0.05) double roughness) {
        double more = reynolds * 1.001;
        double loss = PipeFriction.frictionFactor(reynolds, roughness) * reynolds * reynolds;
        double lossOfMore = PipeFriction.frictionFactor(more, roughness) * more * more;
        assertTrue(lossOfMore > loss, loss + " then " + lossOfMore);
    }

    @Property
    void frictionFactorIsSmoothWhereTheRegimesJoin(
            @ForAll @Scale(15) @DoubleRange(min = 0, max = 0.05) double roughness) {
        for (double join : new double[] {2000, 4000}) {
            double step = 1e-3;
            double at = PipeFriction.frictionFactor(join, roughness);
            double slopeBefore = (at - PipeFriction.frictionFactor(join - step, roughness)) / step;
            double slopeAfter = (PipeFriction.frictionFactor(join + step, roughness) - at) / step;
            assertEquals(slopeBefore, slopeAfter, 1e-9, "slope at Re " + join);
            assertEquals(at, PipeFriction.frictionFactor(join - step, roughness), 1e-6, "value at Re " + join);
        }
    }

    @Property
    void rougherPipeTakesMoreHead(@ForAll @Scale(15) @DoubleRange(min = 2001, max = 1e8) double reynolds,
            @ForAll @Scale(15) @DoubleRange(min = 0, max = 0.049) double roughness) {
        assertTrue(PipeFriction.frictionFactor(reynolds, roughness + 1e-3)
                > PipeFriction.frictionFactor(reynolds, roughness));
    }

    @Property
    void explicitFormulasKeepTheirStatedAccuracy(@ForAll @Scale(15) @DoubleRange(min = 0, max = 1) double reynoldsShare,
            @ForAll @Scale(15) @DoubleRange(min = 0, max = 1) double roughnessShare) {
        double reynolds = 5e3 * Math.pow(2e4, reynoldsShare);
        double roughness = 1e-6 * Math.pow(1e4, roughnessShare);
        double colebrook = PipeFriction.colebrookWhite(reynolds, roughness);
        assertEquals(colebrook, PipeFriction.swameeJain(reynolds, roughness), 0.029 * colebrook);
        assertEquals(colebrook, PipeFriction.haaland(reynolds, roughness), 0.015 * colebrook);
    }
}

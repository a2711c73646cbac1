package org.roofspring.drainage.intensity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Design intensities against published figures. Laws take any unit of depth; inches stay inches here. */
class IntensityPublishedTest {

    /** READ: course notes of Cornell CEE 304, Gumbel fitted by moments to mean 2.5 in, standard deviation 0.7 in. */
    @Test
    void gumbelOfCornellNotes() {
        GumbelLaw law = GumbelLaw.ofMoments(2.5, 0.7);
        // the notes give the inverse of the scale
        assertEquals(1.832, 1 / law.scaleMm(), 5e-4);
        assertEquals(2.185, law.locationMm(), 5e-4);
        assertEquals(4.315, law.depthMm(50), 1e-3);
        assertEquals(0.98, law.nonExceedance(law.depthMm(50)), 1e-12);
    }

    /** MEM: Chow, Maidment and Mays 1988, Applied Hydrology, example 12.2.1, Chicago 10-minute maxima in inches. */
    @Test
    void gumbelOfChicago() {
        GumbelLaw law = GumbelLaw.ofMoments(0.649, 0.177);
        assertEquals(0.138, law.scaleMm(), 5e-4);
        assertEquals(0.569, law.locationMm(), 5e-4);
        assertEquals(0.78, law.depthMm(5), 5e-3);
        assertEquals(0.88, law.depthMm(10), 5e-3);
        assertEquals(1.11, law.depthMm(50), 5e-3);
    }

    /** CALC from the definition of the frequency factor; regression. */
    @ParameterizedTest
    @CsvSource({"2, -0.1643", "5, 0.7194", "10, 1.3046", "25, 2.0438", "50, 2.5923", "100, 3.1367"})
    void frequencyFactor(double years, double factor) {
        assertEquals(factor, ExtremeLaw.gumbelFrequencyFactor(years), 1e-4);
        assertEquals(GumbelLaw.ofMoments(80, 25).depthMm(years), 80 + 25 * ExtremeLaw.gumbelFrequencyFactor(years),
                1e-10);
    }

    /** READ: worked example of a university course on hydrology, Weibull plotting of 39 years. */
    @Test
    void weibullPlotting() {
        assertEquals(40, PlottingPosition.WEIBULL.returnPeriodYears(1, 39), 1e-12);
        assertEquals(20, PlottingPosition.WEIBULL.returnPeriodYears(2, 39), 1e-12);
    }

    /** READ: the same example, depths of 30 years between the two largest of 39 (durations from a flattened table). */
    @ParameterizedTest
    @CsvSource({"20, 18, 19", "30, 25, 27.5", "34, 29, 31.5", "36, 32, 34"})
    void interpolatedDepth(double largestMm, double secondMm, double thirtyYearsMm) {
        List<Double> depths = new ArrayList<>(List.of(largestMm, secondMm));
        for (int i = 0; i < 37; i++) {
            depths.add(secondMm * (1 - (i + 1) / 50.0));
        }
        assertEquals(thirtyYearsMm, new AnnualMaxima(depths).plottedDepthMm(PlottingPosition.WEIBULL, 30), 1e-12);
    }

    /** READ: coefficients of the same example, Chicago 10 years, inches an hour; the 60-minute value is CALC. */
    @Test
    void shermanOfChicago() {
        assertEquals(1.960, new IntensityRelation.Sherman(60.9, 9.56, 0.81).intensityMmPerH(3600), 5e-4);
    }

    /** MEM: Chow, Maidment and Mays 1988, table 14.2.3, Denver 10 years: 3.00 inches an hour for 20 minutes. */
    @Test
    void wenzelOfDenver() {
        IntensityRelation inches = new IntensityRelation.Wenzel(96.6, 13.90, 0.97);
        assertEquals(3.00, inches.intensityMmPerH(1200), 5e-3);
        assertEquals(3.0018, inches.intensityMmPerH(1200), 5e-5);
        assertEquals(76.2, inches.times(IntensityRelation.MM_PER_INCH).intensityMmPerH(1200), 0.1);
    }

    /** CALC by hand, Talbot: 7500 / (5 + 20). */
    @Test
    void talbot() {
        assertEquals(300, new IntensityRelation.Talbot(7500, 20).intensityMmPerH(300), 1e-12);
        assertEquals(25, new IntensityRelation.Talbot(7500, 20).depthMm(300), 1e-12);
    }

    /**
     * MEM: generalised extreme value law of Hosking and Wallis 1997: their approximation
     * {@code k = 7.8590 c + 2.9554 c^2, c = 2/(3 + t3) - ln 2/ln 3} is within 9e-4 for shapes from -0.5 to 0.5.
     */
    @ParameterizedTest
    @CsvSource({"-0.1", "0", "0.05", "0.1699", "0.25", "0.4", "0.5"})
    void shapeAgainstHoskingsApproximation(double t3) {
        double c = 2 / (3 + t3) - Math.log(2) / Math.log(3);
        assertEquals(7.8590 * c + 2.9554 * c * c, GevLaw.of(new LMoments(50, 10, t3)).shape(), 9e-4);
    }

    /** MEM: one-third rule; 5 minutes hold the cube root of 1/288 of the wettest day. CALC. */
    @Test
    void designIntensityStepByStep() {
        GumbelLaw law = new GumbelLaw(60, 20);
        DesignIntensity design = DesignIntensity.of(law, 10, 300, 1.13, DurationRatios.thirdPower());
        assertEquals(60 - 20 * Math.log(-Math.log(0.9)), design.fixedDayMm(), 1e-9);
        assertEquals(1.13 * design.fixedDayMm(), design.slidingDayMm(), 1e-9);
        assertEquals(Math.cbrt(1 / 288.0), design.depthRatio(), 1e-12);
        assertEquals(design.slidingDayMm() * Math.cbrt(1 / 288.0) * 12, design.intensityMmPerH(), 1e-9);
    }
}

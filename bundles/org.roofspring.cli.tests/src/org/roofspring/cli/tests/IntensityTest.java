package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.roofspring.cli.tests.Asked.Answer;

class IntensityTest {
    private static final double MM_PER_INCH = 25.4;

    @TempDir
    Path folder;

    /**
     * Chicago, 10 years, coefficients as printed in a university course on hydrology; 1.960 in/h for an hour is
     * computed.
     * Denver, 10 years (Chow, Maidment and Mays 1988, table 14.2.3, from memory): 3.00 in/h for 20 minutes.
     */
    @ParameterizedTest
    @CsvSource({"sherman --a 60.9 --b 9.56 --n 0.81,60,1.960,0.0005",
        "wenzel --a 96.6 --b 13.90 --n 0.97,20,3.0018,0.0001"})
    void relationsInInches(String relation, double minutes, double inchesPerHour, double tolerance) {
        Answer storm = Asked.answer("intensity --relation-unit in/h --duration " + minutes + "min --relation "
                + relation);
        assertEquals(inchesPerHour * MM_PER_INCH, storm.number("intensity", "mm/h"), tolerance * MM_PER_INCH);
        assertEquals(storm.number("intensity", "mm/h") * minutes / 60, storm.number("depth", "mm"), 1e-9);
    }

    /** By hand: 7500 / (5 + 20). */
    @Test
    void talbot() {
        Answer storm = Asked.answer("intensity --relation talbot --a 7500 --b 20");
        assertEquals(300, storm.number("intensity", "mm/h"), 1e-9);
    }

    /**
     * The Gumbel law from the file by definition: half the mean difference over all pairs of years in place of ranked
     * sums, then each step of the contract: factor 1.13 and cube root of the share of the day (both from memory).
     */
    @ParameterizedTest
    @CsvSource({"2,5", "10,5", "10,60", "100,1440"})
    void gumbelByDefinition(double years, double minutes) throws IOException {
        double[] maxima = yearlyMaxima();
        double mean = 0;
        double differences = 0;
        for (double one : maxima) {
            mean += one / maxima.length;
            for (double other : maxima) {
                differences += Math.abs(one - other);
            }
        }
        double spread = differences / (maxima.length * (maxima.length - 1.0)) / 2;
        double scale = spread / Math.log(2);
        double day = mean - 0.5772156649015329 * scale - scale * Math.log(-Math.log(1 - 1 / years));
        Answer storm = Asked.answer(invented(years, minutes));
        assertEquals(40, storm.number("years"));
        assertEquals(day, storm.number("dayDepth", "mm"), 1e-9);
        double burst = day * 1.13 * Math.cbrt(minutes / 1440);
        assertEquals(burst, storm.number("depth", "mm"), 1e-9);
        assertEquals(burst * 60 / minutes, storm.number("intensity", "mm/h"), 1e-9);
    }

    private static double[] yearlyMaxima() throws IOException {
        Map<String, Double> wettest = new TreeMap<>();
        Files.readAllLines(DemoData.inventedRain()).stream().skip(1).map(line -> line.split(","))
                .forEach(day -> wettest.merge(day[0].substring(0, 4), Double.valueOf(day[1]), Math::max));
        return wettest.values().stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static String invented(double years, double minutes) {
        return "intensity --rain " + DemoData.inventedRain() + " --return-period " + years + "yr --duration " + minutes
                + "min";
    }

    @Test
    void intervalHoldsTheEstimateAndWidensWithTheReturnPeriod() {
        Answer ten = Asked.answer(invented(10, 5));
        Answer hundred = Asked.answer(invented(100, 5));
        assertTrue(ten.number("intensityLow", "mm/h") < ten.number("intensity", "mm/h"));
        assertTrue(ten.number("intensityHigh", "mm/h") > ten.number("intensity", "mm/h"));
        assertTrue(width(hundred) > 1.5 * width(ten));
        assertFalse(ten.cautionCodes().contains("intensity.extrapolated"));
        assertTrue(hundred.caution("intensity.extrapolated").contains("100 years"));
        assertTrue(ten.caution("intensity.ratios").contains("weather service"));
    }

    private static double width(Answer storm) {
        return storm.number("intensityHigh", "mm/h") - storm.number("intensityLow", "mm/h");
    }

    @Test
    void eachLawStandsBesideTheOther() {
        Answer gumbel = Asked.answer(invented(50, 5));
        Answer gev = Asked.answer(invented(50, 5) + " --law gev");
        assertEquals(gumbel.number("intensity", "mm/h"), gev.number("intensityOtherLaw", "mm/h"), 1e-9);
        assertEquals(gev.number("intensity", "mm/h"), gumbel.number("intensityOtherLaw", "mm/h"), 1e-9);
    }

    /** DAEE/CETESB 1979 (from memory), chained: 0.34 x 0.74 x 0.42 of the day in 5 minutes. */
    @Test
    void otherRatios() {
        Answer storm = Asked.answer(invented(10, 5) + " --ratios brazilian --day-factor 1");
        assertEquals(storm.number("dayDepth", "mm") * 0.34 * 0.74 * 0.42, storm.number("depth", "mm"), 1e-9);
    }

    @Test
    void tooFewYearsHaveNoAnswer() {
        String line = Asked.of("intensity --return-period 10yr --rain " + DemoData.realRain()).noAnswer();
        assertTrue(line.contains("has 4 yearly maxima"), line);
    }

    /** Years with a gap may miss their wettest day: they are left out, and that is said. */
    @Test
    void yearsWithGapsAreLeftOut() throws IOException {
        StringBuilder text = new StringBuilder("date,precipitation[mm]\n");
        for (LocalDate day = LocalDate.of(2001, 1, 1); day.getYear() < 2008; day = day.plusDays(1)) {
            if (!day.equals(LocalDate.of(2003, 6, 1))) {
                text.append(day).append(',').append(day.getDayOfYear() == 40 ? day.getYear() - 1950 : 0).append('\n');
            }
        }
        Path file = Files.writeString(folder.resolve("gap.csv"), text);
        Answer storm = Asked.answer("intensity --return-period 5yr --rain " + file);
        assertEquals(6, storm.number("years"));
        assertTrue(storm.caution("intensity.years-left-out").contains("1"));
    }
}

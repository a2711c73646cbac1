package org.roofspring.storage.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The exact interval against printed values, closed forms, and sums of binomial terms. */
class ClopperPearsonPublishedTest {

    /**
     * From memory, verify: Conover, W. J. (1971), Practical Nonparametric Statistics, the plants of p. 97 as printed by
     * the manual page binom.test of the R language (682 of 925); NIST/SEMATECH e-Handbook of Statistical Methods,
     * 7.2.4.1 (4 of 20 at 90 %); Agresti, A. and Coull, B. A. (1998), The American Statistician 52 (0 of 25).
     */
    @ParameterizedTest
    @CsvSource({"682,925,0.95,0.7076683,0.7654066,5e-8", "4,20,0.90,0.071354,0.401029,1.5e-6",
        "0,25,0.95,0,0.137,5e-4"})
    void printedValues(int failures, int trials, double confidence, double low, double high, double tolerance) {
        Interval interval = ClopperPearson.of(failures, trials, confidence);
        assertEquals(low, interval.low(), tolerance);
        assertEquals(high, interval.high(), tolerance);
    }

    /** No failure: 1 - alpha^(1/n) at one side, 1 - (alpha/2)^(1/n) at two. By definition. */
    @Test
    void noFailedYearInForty() {
        assertEquals(1 - Math.pow(0.05, 1.0 / 40), ClopperPearson.upperLimit(0, 40, 0.95), 1e-15);
        assertEquals(0.0722, ClopperPearson.upperLimit(0, 40, 0.95), 5e-5, "about 7 % a year");
        assertEquals(1 - Math.pow(0.025, 1.0 / 40), ClopperPearson.of(0, 40, 0.95).high(), 1e-15);
        assertEquals(0.0881, ClopperPearson.of(0, 40, 0.95).high(), 5e-5);
        assertEquals(0, ClopperPearson.of(0, 40, 0.95).low());
        assertEquals(1, ClopperPearson.of(40, 40, 0.95).high());
    }

    /** The rule of three: close to 3/n, and below it. */
    @ParameterizedTest
    @ValueSource(ints = {30, 100, 1000})
    void ruleOfThree(int trials) {
        double upper = ClopperPearson.upperLimit(0, trials, 0.95);
        assertTrue(upper < 3.0 / trials && upper > 0.94 * 3 / trials, () -> "" + upper);
    }

    /** The ends are the chances at which the tail of the binomial has just the probability asked for. */
    @Test
    void sumsOfBinomialTerms() {
        for (int trials : new int[] {1, 2, 5, 13, 40, 77}) {
            for (int failures = 0; failures <= trials; failures++) {
                for (double confidence : new double[] {0.5, 0.9, 0.95, 0.99}) {
                    Interval interval = ClopperPearson.of(failures, trials, confidence);
                    double tail = (1 - confidence) / 2;
                    if (failures < trials) {
                        assertEquals(tail, atMost(failures, trials, interval.high()), 1e-11);
                    }
                    if (failures > 0) {
                        assertEquals(1 - tail, atMost(failures - 1, trials, interval.low()), 1e-11);
                    }
                }
            }
        }
    }

    /** Chance of that many failures or fewer, term by term with 50 digits. */
    private static double atMost(int failures, int trials, double chance) {
        MathContext digits = new MathContext(50);
        BigDecimal p = new BigDecimal(chance);
        BigDecimal q = BigDecimal.ONE.subtract(p);
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal ways = BigDecimal.ONE;
        for (int k = 0; k <= failures; k++) {
            sum = sum.add(ways.multiply(p.pow(k, digits)).multiply(q.pow(trials - k, digits)), digits);
            ways = ways.multiply(BigDecimal.valueOf(trials - k)).divide(BigDecimal.valueOf(k + 1), digits);
        }
        return sum.doubleValue();
    }

    @Test
    void refusesWhatIsNoCount() {
        assertEquals("failures is 5; accepted is 0 to the trials, 4",
                assertThrows(IllegalArgumentException.class, () -> ClopperPearson.of(5, 4, 0.9)).getMessage());
        assertThrows(IllegalArgumentException.class, () -> ClopperPearson.of(-1, 4, 0.9));
        assertThrows(IllegalArgumentException.class, () -> ClopperPearson.of(0, 0, 0.9));
        for (double confidence : new double[] {0, 1, -0.5, 1.5, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> ClopperPearson.of(0, 4, confidence));
            assertThrows(IllegalArgumentException.class, () -> ClopperPearson.upperLimit(0, 4, confidence));
        }
    }
}

package org.roofspring.rain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.Arrays;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The formulas behind the synthesis: occurrence and amounts of Richardson (1981), shapes of Thom (1958) and of
 * Greenwood and Durand (1960), all from memory. The figures of the Seattle record are regression values, calculated
 * by an independent script, not published.
 */
class WeatherSynthesisPublishedTest {

    @Test
    void seattleRegression() throws IOException {
        RainRecord record = RainReader.read(TestFiles.SEATTLE).record();
        RainStatistics statistics = RainStatistics.of(record);
        double[] wetMm = Arrays.stream(record.completeDepthsMm()).filter(mm -> mm > 0).toArray();
        double meanMm = Arrays.stream(wetMm).average().orElseThrow();
        double deficit = Math.log(meanMm) - Arrays.stream(wetMm).map(Math::log).average().orElseThrow();
        assertEquals(7.10433, meanMm, 5e-6);
        assertEquals(0.743966, deficit, 5e-7);
        assertEquals(0.810308, GammaFit.thomShape(deficit), 5e-7);
        double shape = GammaFit.greenwoodDurandShape(deficit);
        assertEquals(0.797972, shape, 5e-7);
        GammaFit fit = GammaFit.ofMean(shape, meanMm);
        assertEquals(8.90299, fit.scaleMm(), 5e-6);
        MonthWeather weather = new MonthWeather(statistics.p01().orElseThrow(), statistics.p11().orElseThrow(), fit);
        assertEquals(0.426712, weather.wetRatio(), 5e-7);
        // expected yearly rain is 365 pi a b
        assertEquals(365 * 0.426712 * 7.10433, 365 * weather.meanDailyMm(), 0.01);
    }

    /** Both approximate the maximum likelihood, ln a - digamma(a) = Y, which is solved here by bisection. */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.1, 0.3, 0.5771, 0.5773, 0.743966, 1, 2, 5, 10, 16.9})
    void shapesApproximateTheMaximumLikelihood(double deficit) {
        double low = 1e-9;
        double high = 1e9;
        for (int step = 0; step < 200; step++) {
            double middle = Math.sqrt(low * high);
            if (Math.log(middle) - Gamma.digamma(middle) > deficit) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertEquals(low, GammaFit.greenwoodDurandShape(deficit), 2e-4 * low);
        if (low >= 1) {
            assertEquals(low, GammaFit.thomShape(deficit), 0.01 * low);
        }
    }

    @Test
    void shapesOfLimitsAreFinite() {
        assertEquals(GammaFit.LARGEST_SHAPE, GammaFit.greenwoodDurandShape(0));
        assertEquals(GammaFit.LARGEST_SHAPE, GammaFit.thomShape(0));
        assertEquals(GammaFit.LARGEST_SHAPE, GammaFit.thomShape(Double.MIN_VALUE));
        assertTrue(GammaFit.greenwoodDurandShape(1e300) > 0);
        for (double wrong : new double[] {-1e-9, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> GammaFit.thomShape(wrong));
            assertThrows(IllegalArgumentException.class, () -> GammaFit.greenwoodDurandShape(wrong));
            assertThrows(IllegalArgumentException.class, () -> new GammaFit(wrong, 1));
            assertThrows(IllegalArgumentException.class, () -> new GammaFit(1, wrong));
            assertThrows(IllegalArgumentException.class, () -> new MonthWeather(wrong, 0.5, new GammaFit(1, 1)));
            assertThrows(IllegalArgumentException.class, () -> new MonthWeather(0.5, wrong, new GammaFit(1, 1)));
        }
    }
}

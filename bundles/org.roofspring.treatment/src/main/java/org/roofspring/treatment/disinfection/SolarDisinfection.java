package org.roofspring.treatment.disinfection;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * Clear bottles laid in the sun.
 *
 * @param durationS exposure asked for [s]: 6 hours of sun, or two days under cloud
 * @param suitable  whether bottle and water allow it
 * @param reasons   why not; empty where suitable
 */
public record SolarDisinfection(double durationS, boolean suitable, List<String> reasons) {

    /** The sky over the bottles. */
    public enum Sky {
        /** Sun through most of the day. */
        CLEAR,
        /** More than half of the sky under cloud. */
        CLOUDY
    }

    public static final Source EXPOSURE_SOURCE = Source.read("CDC 2011, solar disinfection fact sheet: bottles of 0.3 "
            + "to 2.0 L, 6 hours of sun or 2 days under cloud");
    public static final Source TURBIDITY_SOURCE = Source.fromMemory("Eawag/Sandec, SODIS manual: below 30 NTU");
    /** Largest bottle [m3]. */
    public static final double MAX_BOTTLE_M3 = 0.002;
    /** The water must be clearer than this [NTU]. */
    public static final double TURBIDITY_LIMIT_NTU = 30;

    private static final double CLEAR_S = 6 * 3600.0;
    private static final double CLOUDY_S = 48 * 3600.0;

    public SolarDisinfection {
        reasons = Checks.list("reasons", reasons);
    }

    /**
     * @param bottleVolumeM3 above 0 to 1e6 [m3]
     * @param turbidityNtu   0 to 1e6 [NTU]
     * @throws IllegalArgumentException outside these ranges
     */
    public static SolarDisinfection of(double bottleVolumeM3, Sky sky, double turbidityNtu) {
        Checks.positive("bottle volume (bottleVolumeM3)", bottleVolumeM3, 1e6, "m3");
        Checks.within("turbidity (turbidityNtu)", turbidityNtu, 0, 1e6, "NTU");
        List<String> reasons = new ArrayList<>();
        if (bottleVolumeM3 > MAX_BOTTLE_M3 * (1 + TableRows.SLACK)) {
            reasons.add("The bottle holds " + Checks.shown(bottleVolumeM3 * 1000)
                    + " L; the sun reaches through at most 2 L.");
        }
        if (turbidityNtu >= TURBIDITY_LIMIT_NTU) {
            reasons.add("The water has " + Checks.shown(turbidityNtu)
                    + " NTU; it must be below 30 NTU, so let it settle or filter it first.");
        }
        double durationS = Checks.present("sky", sky) == Sky.CLEAR ? CLEAR_S : CLOUDY_S;
        return new SolarDisinfection(durationS, reasons.isEmpty(), reasons);
    }
}

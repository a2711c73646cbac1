import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Random;

/**
 * Makes the daily rain of an invented upland, 1985 to 2024: {@code java UplandRain.java > upland-40y.csv}.
 *
 * <p>The upland has one rainy season, from about the middle of October to April, and five dry months. Nothing in it
 * was measured. It is deliberately not made by the weather generator of the program, whose weakness is years that
 * are too much alike: here each rainy season has a wetness of its own that carries over into the next, a few are very
 * poor, and the rains break off for weeks.
 *
 * <p>Only {@link Random} and {@link StrictMath} are used, whose results are the same on every machine.
 */
public final class UplandRain {
    private static final long SEED = 1789;
    private static final LocalDate FIRST = LocalDate.of(1985, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2024, 12, 31);
    /** Share of wet days of an average year in the middle of each month, January first. */
    private static final double[] WET_RATIO = {0.58, 0.55, 0.48, 0.27, 0.07, 0.025, 0.015, 0.02, 0.06, 0.24, 0.45, 0.56};
    /** Mean depth of a wet day [mm] in the middle of each month. */
    private static final double[] WET_DAY_MM = {12.4, 12.2, 11.2, 9.2, 6.5, 4.0, 3.5, 4.0, 5.5, 9.2, 10.8, 12.2};
    /** How much likelier a wet day is after a wet one than after a dry one. */
    private static final double PERSISTENCE = 0.34;
    /** Chance that a break of the rains begins on a day of the rainy season. */
    private static final double BREAK_CHANCE = 0.006;

    private final Random random = new Random(SEED);
    private double wetness;
    private int onsetShiftDays;
    private int breakDaysLeft;
    private boolean wet;

    private UplandRain() {
    }

    public static void main(String[] args) {
        PrintStream out = new PrintStream(System.out, false, StandardCharsets.US_ASCII);
        out.print("date,precipitation[mm]\n");
        UplandRain upland = new UplandRain();
        upland.beginSeason();
        for (LocalDate date = FIRST; !date.isAfter(LAST); date = date.plusDays(1)) {
            if (date.getMonthValue() == 8 && date.getDayOfMonth() == 1) {
                upland.beginSeason();
            }
            int tenths = upland.nextTenths(date);
            out.print(date + "," + tenths / 10 + "." + tenths % 10 + "\n");
        }
        out.flush();
    }

    /** A season's wetness: a third of the last one's departure stays; one season in twelve fails. */
    private void beginSeason() {
        wetness = 0.3 * wetness + 0.11 * random.nextGaussian();
        if (random.nextInt(12) == 0) {
            wetness -= 0.3;
        }
        onsetShiftDays = (int) StrictMath.round(11 * random.nextGaussian() - 25 * wetness);
    }

    private int nextTenths(LocalDate date) {
        int month = date.getMonthValue();
        // a late onset moves the rising half of the season only
        LocalDate felt = month >= 8 && month <= 12 ? date.minusDays(onsetShiftDays) : date;
        double ratio = between(WET_RATIO, felt) * StrictMath.exp(0.75 * wetness);
        if (breakDaysLeft > 0) {
            breakDaysLeft--;
            ratio *= 0.06;
        } else if (random.nextDouble() < BREAK_CHANCE * (wetness < -0.15 ? 2 : 1)) {
            breakDaysLeft = 8 + random.nextInt(18);
        }
        double afterDry = ratio * (1 - PERSISTENCE);
        double chance = wet ? afterDry + PERSISTENCE : afterDry;
        // in the dry months a wet day is a passing storm
        wet = random.nextDouble() < (ratio < 0.1 && wet ? ratio + 0.12 : chance);
        if (!wet) {
            return 0;
        }
        // Weibull with a tail heavier than the exponential; its mean is 1.19 times its scale
        double scaleMm = between(WET_DAY_MM, felt) * StrictMath.exp(0.4 * wetness) / 1.19;
        double depthMm = scaleMm * StrictMath.pow(-StrictMath.log(1 - random.nextDouble()), 1.33);
        return (int) StrictMath.round(10 * depthMm);
    }

    /** A value of the middle of each month, straight lines in between. */
    private static double between(double[] monthly, LocalDate date) {
        double months = date.getMonthValue() - 1 + (date.getDayOfMonth() - 0.5) / date.lengthOfMonth() - 0.5;
        int before = (int) StrictMath.floor(months);
        double part = months - before;
        return monthly[Math.floorMod(before, 12)] * (1 - part) + monthly[Math.floorMod(before + 1, 12)] * part;
    }
}

package org.roofspring.treatment.disinfection;

import java.util.Arrays;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * Free chlorine contact time that inactivates 3 log (99.9 %) of Giardia cysts [mg.min/L], by residual, pH and
 * temperature; other log steps are in proportion.
 *
 * <p>The source rounds to a row that asks for at least as much: temperature down, pH up, residual up; residuals above
 * 3.0 mg/L use the row of 3.0, those below 0.4 the row of 0.4, pH below 6 the column of 6, temperatures above 25 degC
 * the table of 25. Below 0.5 degC and above pH 9 the source has no value, so there is no credit.
 *
 * <p>The table was written from memory. Eight of its values were compared with extracts that quote the source, and
 * all its rows follow the source's own rule that the need halves for each 10 degC above 5 degC, within its rounding;
 * one printed value looks high against its neighbours (0.5 degC, pH 7.5, 2.2 mg/L: 297) and was left so.
 */
public final class GiardiaContactTable {
    public static final Source SOURCE = Source.fromMemory("US EPA 1991, Guidance Manual for Compliance with the "
            + "Filtration and Disinfection Requirements for Public Water Systems, Tables E-1 to E-6 (again in "
            + "EPA 815-R-20-003)");
    /** Log reduction that the tabulated values stand for, and the largest that is credited. */
    public static final double LOG = 3;

    private static final double[] TEMPERATURE_C = {0.5, 5, 10, 15, 20, 25};
    private static final double[] RESIDUAL_MG_PER_L = {0.4, 0.6, 0.8, 1.0, 1.2, 1.4, 1.6, 1.8, 2.0, 2.2, 2.4, 2.6, 2.8,
        3.0};
    private static final double[] PH = {6, 6.5, 7, 7.5, 8, 8.5, 9};
    /** By temperature, residual, pH. */
    private static final int[][][] CT = {
        {
            {137, 163, 195, 237, 277, 329, 390}, {141, 168, 200, 239, 286, 342, 407},
            {145, 172, 205, 246, 295, 354, 422}, {148, 176, 210, 253, 304, 365, 437},
            {152, 180, 215, 259, 313, 376, 451}, {155, 184, 221, 266, 321, 387, 464},
            {157, 189, 226, 273, 329, 397, 477}, {162, 193, 231, 279, 338, 407, 489},
            {165, 197, 236, 286, 346, 417, 500}, {169, 201, 242, 297, 353, 426, 511},
            {172, 205, 247, 298, 361, 435, 522}, {175, 209, 252, 304, 368, 444, 533},
            {178, 213, 257, 310, 375, 452, 543}, {181, 217, 261, 316, 382, 460, 552}},
        {
            {97, 117, 139, 166, 198, 236, 279}, {100, 120, 143, 171, 204, 244, 291},
            {103, 122, 146, 175, 210, 252, 301}, {105, 125, 149, 179, 216, 260, 312},
            {107, 127, 152, 183, 221, 267, 320}, {109, 130, 155, 187, 227, 274, 329},
            {111, 132, 158, 192, 232, 281, 337}, {114, 135, 162, 196, 238, 287, 345},
            {116, 138, 165, 200, 243, 294, 353}, {118, 140, 169, 204, 248, 300, 361},
            {120, 143, 172, 209, 253, 306, 368}, {122, 146, 175, 213, 258, 312, 375},
            {124, 148, 178, 217, 263, 318, 382}, {126, 151, 182, 221, 268, 324, 389}},
        {
            {73, 88, 104, 125, 149, 177, 209}, {75, 90, 107, 128, 153, 183, 218},
            {78, 92, 110, 131, 158, 189, 226}, {79, 94, 112, 134, 162, 195, 234},
            {80, 95, 114, 137, 166, 200, 240}, {82, 98, 116, 140, 170, 206, 247},
            {83, 99, 119, 144, 174, 211, 253}, {86, 101, 122, 147, 179, 215, 259},
            {87, 104, 124, 150, 182, 221, 265}, {89, 105, 127, 153, 186, 225, 271},
            {90, 107, 129, 157, 190, 230, 276}, {92, 110, 131, 160, 194, 234, 281},
            {93, 111, 134, 163, 197, 239, 287}, {95, 113, 137, 166, 201, 243, 292}},
        {
            {49, 59, 70, 83, 99, 118, 140}, {50, 60, 72, 86, 102, 122, 146},
            {52, 61, 73, 88, 105, 126, 151}, {53, 63, 75, 90, 108, 130, 156},
            {54, 64, 76, 92, 111, 134, 160}, {55, 65, 78, 94, 114, 137, 165},
            {56, 66, 79, 96, 116, 141, 169}, {57, 68, 81, 98, 119, 144, 173},
            {58, 69, 83, 100, 122, 147, 177}, {59, 70, 85, 102, 124, 150, 181},
            {60, 72, 86, 105, 127, 153, 184}, {61, 73, 88, 107, 129, 156, 188},
            {62, 74, 89, 109, 132, 159, 191}, {63, 76, 91, 111, 134, 162, 195}},
        {
            {36, 44, 52, 62, 74, 89, 105}, {38, 45, 54, 64, 77, 92, 109},
            {39, 46, 55, 66, 79, 95, 113}, {39, 47, 56, 67, 81, 98, 117},
            {40, 48, 57, 69, 83, 100, 120}, {41, 49, 58, 70, 85, 103, 123},
            {42, 50, 59, 72, 87, 105, 126}, {43, 51, 61, 74, 89, 108, 129},
            {44, 52, 62, 75, 91, 110, 132}, {44, 53, 63, 77, 93, 113, 135},
            {45, 54, 65, 78, 95, 115, 138}, {46, 55, 66, 80, 97, 117, 141},
            {47, 56, 67, 81, 99, 119, 143}, {47, 57, 68, 83, 101, 122, 146}},
        {
            {24, 29, 35, 42, 50, 59, 70}, {25, 30, 36, 43, 51, 61, 73},
            {26, 31, 37, 44, 53, 63, 75}, {26, 31, 37, 45, 54, 65, 78},
            {27, 32, 38, 46, 55, 67, 80}, {27, 33, 39, 47, 57, 69, 82},
            {28, 33, 40, 48, 58, 70, 84}, {29, 34, 41, 49, 60, 72, 86},
            {29, 35, 41, 50, 61, 74, 88}, {30, 35, 42, 51, 62, 75, 90},
            {30, 36, 43, 52, 63, 77, 92}, {31, 37, 44, 53, 65, 78, 94},
            {31, 37, 45, 54, 66, 80, 96}, {32, 38, 46, 55, 67, 81, 97}}};

    private GiardiaContactTable() {
    }

    /** True where the source has a value: from 0.5 degC and up to pH 9. */
    public static boolean covers(double ph, double temperatureC) {
        return ph <= last(PH) + TableRows.SLACK && temperatureC >= TEMPERATURE_C[0] - TableRows.SLACK;
    }

    /**
     * Contact time for 3 log by the rounding rule.
     *
     * @param residualMgPerL above 0 to 100 [mg/L]
     * @param ph             0 to 9
     * @param temperatureC   0.5 to 100 [degC]
     * @return [mg.min/L]
     * @throws IllegalArgumentException outside these ranges
     */
    public static double rounded(double residualMgPerL, double ph, double temperatureC) {
        check(residualMgPerL, ph, temperatureC);
        return CT[TableRows.atOrBelow(TEMPERATURE_C, temperatureC)][TableRows.atOrAbove(RESIDUAL_MG_PER_L,
                residualMgPerL)][TableRows.atOrAbove(PH, ph)];
    }

    /** Contact time for 3 log, linear between the rows and held at the table's ends [mg.min/L]. */
    public static double interpolated(double residualMgPerL, double ph, double temperatureC) {
        check(residualMgPerL, ph, temperatureC);
        double[] byTemperature = new double[TEMPERATURE_C.length];
        for (int t = 0; t < byTemperature.length; t++) {
            double[] byResidual = new double[RESIDUAL_MG_PER_L.length];
            for (int c = 0; c < byResidual.length; c++) {
                double[] row = Arrays.stream(CT[t][c]).asDoubleStream().toArray();
                byResidual[c] = TableRows.linear(PH, row, ph);
            }
            byTemperature[t] = TableRows.linear(RESIDUAL_MG_PER_L, byResidual, residualMgPerL);
        }
        return TableRows.linear(TEMPERATURE_C, byTemperature, temperatureC);
    }

    private static void check(double residualMgPerL, double ph, double temperatureC) {
        Checks.positive("residual (residualMgPerL)", residualMgPerL, ChlorineContact.MAX_RESIDUAL_MG_PER_L, "mg/L");
        Checks.within("pH (ph)", ph, 0, last(PH) + TableRows.SLACK, "");
        Checks.within("temperature (temperatureC)", temperatureC, TEMPERATURE_C[0] - TableRows.SLACK, 100, "degC");
    }

    private static double last(double[] values) {
        return values[values.length - 1];
    }
}

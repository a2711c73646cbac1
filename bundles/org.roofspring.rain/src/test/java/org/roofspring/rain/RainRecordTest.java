package org.roofspring.rain;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RainRecordTest {
    private static final LocalDate DAY = LocalDate.of(2024, 2, 27);
    private final RainRecord record = RainRecord.of(DAY, new double[] {1, Double.NaN, 0, 2.5});

    @Test
    void daysAndGaps() {
        assertEquals(4, record.days());
        assertEquals(LocalDate.of(2024, 3, 1), record.lastDay());
        assertEquals(LocalDate.of(2024, 2, 29), record.date(2));
        assertEquals(2, record.indexOf(LocalDate.of(2024, 2, 29)));
        assertTrue(record.isMissing(1));
        assertEquals(DayMark.MISSING, record.mark(1));
        assertEquals(1, record.missingDays());
        assertFalse(record.isComplete());
        assertEquals(9, record.depthMmOr(1, 9));
        assertTrue(assertThrows(MissingRainException.class, () -> record.depthMm(1)).getMessage()
                .contains("2024-02-28"));
        assertTrue(assertThrows(MissingRainException.class, record::completeDepthsMm).getMessage()
                .startsWith("1 of 4 days are missing, the first on 2024-02-28"));
    }

    @Test
    void sliceKeepsDates() {
        RainRecord slice = record.slice(LocalDate.of(2024, 2, 29), LocalDate.of(2024, 3, 1));
        assertArrayEquals(new double[] {0, 2.5}, slice.completeDepthsMm());
        assertEquals(LocalDate.of(2024, 2, 29), slice.firstDay());
        assertThrows(IllegalArgumentException.class, () -> record.slice(DAY.plusDays(2), DAY));
        assertThrows(IllegalArgumentException.class, () -> record.slice(DAY.minusDays(1), DAY));
        assertThrows(IllegalArgumentException.class, () -> record.slice(DAY, DAY.plusDays(4)));
    }

    @Test
    void immutable() {
        double[] depthMm = {1, 2};
        RainRecord copy = RainRecord.of(DAY, depthMm);
        depthMm[0] = 7;
        copy.completeDepthsMm()[1] = 7;
        assertArrayEquals(new double[] {1, 2}, copy.completeDepthsMm());
    }

    @Test
    void hashIsOfDateAndDepths() throws Exception {
        ByteBuffer bytes = ByteBuffer.allocate(40).putLong(DAY.toEpochDay()).putDouble(1).putDouble(Double.NaN)
                .putDouble(0).putDouble(2.5);
        assertEquals(HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes.array())),
                record.contentHash());
        assertEquals(record, RainRecord.of(DAY, new double[] {1, Double.NaN, -0.0, 2.5}));
        assertEquals(record.contentHash(), RainRecord.of(DAY, new double[] {1, Double.NaN, -0.0, 2.5}).contentHash());
        assertNotEquals(record.contentHash(), RainRecord.of(DAY.plusDays(1),
                new double[] {1, Double.NaN, 0, 2.5}).contentHash());
        assertNotEquals(RainRecord.of(DAY, new double[5000]).contentHash(),
                RainRecord.of(DAY, new double[5001]).contentHash());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, -Double.MIN_VALUE, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e300, 10_001})
    void impossibleDepthsAreRefused(double depth) {
        String message = assertThrows(IllegalArgumentException.class,
                () -> RainRecord.of(DAY, new double[] {1, depth})).getMessage();
        assertTrue(message.contains("2024-02-28") && message.contains("0 to 10000 mm"), message);
    }

    @Test
    void marksMustAgree() {
        assertThrows(IllegalArgumentException.class, () -> RainRecord.of(DAY, new double[0]));
        assertThrows(IllegalArgumentException.class,
                () -> RainRecord.of(DAY, new double[] {1}, new DayMark[] {DayMark.MISSING}));
        assertThrows(IllegalArgumentException.class, () -> RainRecord.of(DAY, new double[] {1}, new DayMark[0]));
        assertThrows(IllegalArgumentException.class, () -> RainRecord.of(DAY, new double[] {1}, DayMark.MISSING));
        assertEquals(1, RainRecord.of(DAY, new double[] {1, Double.NaN}, DayMark.SYNTHETIC)
                .count(DayMark.SYNTHETIC));
    }
}

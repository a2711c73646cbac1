package org.roofspring.icalendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.TimeZone;

import org.junit.jupiter.api.Test;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;

/** What is written, as another library reads it. */
class CalendarTextTest {
    private static final Instant STAMP = Instant.parse("2025-02-01T00:00:00Z");
    private static final DayEntry GUTTERS = new DayEntry("task-gutters-2025-09-25@site", LocalDate.of(2025, 9, 25),
            "Clean the gutters; all of them, by hand", "Remove leaves\nFlush, away from the tank\nFälle: \"ladder\" \\ "
                    + "held by a second person, never in wind or wet, and never alone on the roof");
    private static final DayEntry LEVEL = new DayEntry("task-level-2025-02-08@site", LocalDate.of(2025, 2, 8),
            "Read the dipstick", "");

    @Test
    void anIndependentReaderAcceptsIt() {
        String text = CalendarText.of(List.of(GUTTERS, LEVEL), STAMP);
        List<ICalendar> read = Biweekly.parse(text).all();
        assertEquals(1, read.size());
        ICalendar calendar = read.getFirst();
        assertEquals(ICalVersion.V2_0, calendar.getVersion());
        assertTrue(calendar.validate(ICalVersion.V2_0).isEmpty(), () -> calendar.validate(ICalVersion.V2_0).toString());
        assertEquals(2, calendar.getEvents().size());
        VEvent event = calendar.getEvents().getFirst();
        assertEquals(GUTTERS.title(), event.getSummary().getValue());
        assertEquals(GUTTERS.description(), event.getDescription().getValue());
        assertEquals(GUTTERS.uid(), event.getUid().getValue());
        assertTrue(!event.getDateStart().getValue().hasTime());
        assertEquals(GUTTERS.date(), event.getDateStart().getValue().toInstant().atZone(TimeZone.getDefault().toZoneId())
                .toLocalDate());
    }

    /** RFC 5545, 3.1: lines end in CR LF and hold at most 75 octets. */
    @Test
    void linesAreFolded() {
        String text = CalendarText.of(List.of(GUTTERS), STAMP);
        assertTrue(text.endsWith("\r\n"));
        for (String line : text.split("\r\n")) {
            assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
        }
        assertEquals(text, CalendarText.of(List.of(GUTTERS), STAMP));
    }

    @Test
    void refusals() {
        assertThrows(IllegalArgumentException.class, () -> CalendarText.of(List.of(), STAMP));
        assertThrows(IllegalArgumentException.class, () -> new DayEntry(" ", LocalDate.EPOCH, "t", ""));
        assertThrows(IllegalArgumentException.class, () -> new DayEntry("u", LocalDate.EPOCH, "", ""));
        assertThrows(NullPointerException.class, () -> new DayEntry("u", null, "t", ""));
    }
}

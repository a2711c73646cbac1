package org.roofspring.icalendar;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;

import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.CalScale;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.Version;

/**
 * Writes days as an iCalendar file. Source: RFC 5545, Internet Calendaring and Scheduling Core Object Specification,
 * 2009 (from memory, verify).
 */
public final class CalendarText {
    private CalendarText() {
    }

    /**
     * The text of the file. The same entries and stamp give the same text.
     *
     * @param entries at least one, for a calendar without any is not valid
     * @param stamp   when it was made
     */
    public static String of(List<DayEntry> entries, Instant stamp) {
        if (entries.isEmpty()) {
            throw new IllegalArgumentException("a calendar needs at least one entry");
        }
        Calendar calendar = new Calendar();
        calendar.add(new ProdId("-//Roofspring//Upkeep//EN"));
        Version version = new Version();
        version.setValue("2.0");
        calendar.add(version);
        calendar.add(new CalScale("GREGORIAN"));
        for (DayEntry entry : entries) {
            VEvent event = new VEvent(false);
            event.add(new Uid(entry.uid()));
            event.add(new DtStamp(stamp));
            event.add(new DtStart<>(entry.date()));
            event.add(new Summary(entry.title()));
            if (!entry.description().isEmpty()) {
                event.add(new Description(entry.description()));
            }
            calendar.add(event);
        }
        StringWriter text = new StringWriter();
        try {
            new CalendarOutputter(true).output(calendar, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}

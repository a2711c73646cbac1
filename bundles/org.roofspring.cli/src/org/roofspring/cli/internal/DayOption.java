package org.roofspring.cli.internal;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads options that are a day. */
final class DayOption implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("\"" + text + "\" is not a day; a date such as 2026-01-31 is accepted");
        }
    }
}

package org.roofspring.rain;

/**
 * What is told about a rain file; whatever is null is found from the content.
 *
 * @param format      layout
 * @param dateColumn  name of the date column of a generic CSV
 * @param depthColumn name of the depth column of a generic CSV
 * @param depthUnit   unit of the depth; stands above a unit in the header
 * @param datePattern pattern of the dates as in {@link java.time.format.DateTimeFormatter}, such as
 *                    {@code dd.MM.yyyy}
 * @param delimiter   character between columns
 * @param decimalMark {@code '.'} or {@code ','}
 * @param station     station to take from a file of several
 * @param multiDay    what to do with totals of several days
 */
public record ReadOptions(RainFormat format, String dateColumn, String depthColumn, DepthUnit depthUnit,
        String datePattern, Character delimiter, Character decimalMark, String station, MultiDayPolicy multiDay) {

    /** Everything is found from the content; totals of several days are not spread. */
    public static final ReadOptions AUTO = new ReadOptions(RainFormat.AUTO, null, null, null, null, null, null, null,
            MultiDayPolicy.REFUSE);

    public ReadOptions {
        format = format == null ? RainFormat.AUTO : format;
        multiDay = multiDay == null ? MultiDayPolicy.REFUSE : multiDay;
        if (decimalMark != null && decimalMark != '.' && decimalMark != ',') {
            throw new IllegalArgumentException("decimalMark is '" + decimalMark + "'; '.' or ',' is accepted");
        }
        if (delimiter != null && (Character.isLetterOrDigit(delimiter) || "\"\r\n#.-".indexOf(delimiter) >= 0)) {
            throw new IllegalArgumentException("delimiter is '" + delimiter
                    + "'; a comma, semicolon, tab, bar or space is accepted");
        }
        if (delimiter != null && delimiter.equals(decimalMark)) {
            throw new IllegalArgumentException("delimiter and decimalMark are both '" + delimiter
                    + "'; two different characters are accepted");
        }
    }

    /** The same with another layout. */
    public ReadOptions withFormat(RainFormat value) {
        return new ReadOptions(value, dateColumn, depthColumn, depthUnit, datePattern, delimiter, decimalMark,
                station, multiDay);
    }

    /** The same with a told date column. */
    public ReadOptions withDateColumn(String value) {
        return new ReadOptions(format, value, depthColumn, depthUnit, datePattern, delimiter, decimalMark, station,
                multiDay);
    }

    /** The same with a told depth column. */
    public ReadOptions withDepthColumn(String value) {
        return new ReadOptions(format, dateColumn, value, depthUnit, datePattern, delimiter, decimalMark, station,
                multiDay);
    }

    /** The same with a told unit of depth. */
    public ReadOptions withDepthUnit(DepthUnit value) {
        return new ReadOptions(format, dateColumn, depthColumn, value, datePattern, delimiter, decimalMark, station,
                multiDay);
    }

    /** The same with a told date pattern. */
    public ReadOptions withDatePattern(String value) {
        return new ReadOptions(format, dateColumn, depthColumn, depthUnit, value, delimiter, decimalMark, station,
                multiDay);
    }

    /** The same with a told delimiter. */
    public ReadOptions withDelimiter(Character value) {
        return new ReadOptions(format, dateColumn, depthColumn, depthUnit, datePattern, value, decimalMark, station,
                multiDay);
    }

    /** The same with a told decimal mark. */
    public ReadOptions withDecimalMark(Character value) {
        return new ReadOptions(format, dateColumn, depthColumn, depthUnit, datePattern, delimiter, value, station,
                multiDay);
    }

    /** The same with a told station. */
    public ReadOptions withStation(String value) {
        return new ReadOptions(format, dateColumn, depthColumn, depthUnit, datePattern, delimiter, decimalMark, value,
                multiDay);
    }

    /** The same with another policy for totals of several days. */
    public ReadOptions withMultiDay(MultiDayPolicy value) {
        return new ReadOptions(format, dateColumn, depthColumn, depthUnit, datePattern, delimiter, decimalMark,
                station, value);
    }
}

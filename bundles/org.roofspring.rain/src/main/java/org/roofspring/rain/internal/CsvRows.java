package org.roofspring.rain.internal;

import de.siegmar.fastcsv.reader.CloseableIterator;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Rows of a CSV with its header. Lines that are blank or begin with # are skipped; a row with fewer or more fields
 * than the header is a fault, since a file that was cut or has commas in its numbers looks like that.
 */
final class CsvRows {
    private static final char[] DELIMITERS = {',', ';', '\t', '|'};
    private static final int ROWS_BETWEEN_POLLS = 1024;

    private final RainFile file;
    private final char delimiter;
    private final CloseableIterator<CsvRecord> rows;
    private final List<String> header;
    private final boolean endsWithLineEnd;
    private CsvRecord row;
    private long count;

    /**
     * Opens the rows after the header.
     *
     * @param toldDelimiter null: found from the first line
     */
    CsvRows(RainFile file, Character toldDelimiter) {
        this.file = file;
        String text = file.text();
        this.endsWithLineEnd = text.endsWith("\n") || text.endsWith("\r");
        this.delimiter = toldDelimiter != null ? toldDelimiter : findDelimiter(text);
        this.rows = CsvReader.builder().fieldSeparator(delimiter).commentStrategy(CommentStrategy.SKIP)
                .allowExtraFields(true).allowMissingFields(true).ofCsvRecord(text).iterator();
        if (!advance()) {
            throw file.fault(0, 0, "the file has no row", RainFile.ACCEPTED);
        }
        this.header = row.getFields().stream().map(String::strip).toList();
    }

    private static char findDelimiter(String text) {
        String first = text.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).findFirst().orElse("");
        char best = DELIMITERS[0];
        for (char candidate : DELIMITERS) {
            best = count(first, candidate) > count(first, best) ? candidate : best;
        }
        return best;
    }

    private static long count(String line, char wanted) {
        boolean inQuotes = false;
        long count = 0;
        for (int i = 0; i < line.length(); i++) {
            inQuotes ^= line.charAt(i) == '"';
            count += !inQuotes && line.charAt(i) == wanted ? 1 : 0;
        }
        return count;
    }

    List<String> header() {
        return header;
    }

    char delimiter() {
        return delimiter;
    }

    /** Goes to the next row with content; false after the last. */
    boolean next() {
        while (advance()) {
            if (row.getFields().stream().allMatch(String::isBlank)) {
                continue;
            }
            int fields = row.getFieldCount();
            if (fields < header.size()) {
                throw file.fault(line(), fields, "the row ends after " + fields + " of " + header.size() + " fields",
                        "as many fields as the header has are accepted");
            }
            if (fields > header.size() && !row.getFields().subList(header.size(), fields).stream()
                    .allMatch(String::isBlank)) {
                throw file.fault(line(), header.size() + 1, "the row has " + fields + " fields, the header "
                        + header.size(), "as many fields as the header has are accepted, and decimal commas only "
                        + "with another delimiter or in quotes");
            }
            return true;
        }
        return false;
    }

    private boolean advance() {
        if (count++ % ROWS_BETWEEN_POLLS == 0) {
            file.poll();
        }
        if (!hasMore()) {
            return false;
        }
        row = orFault(rows::next);
        return true;
    }

    private boolean hasMore() {
        return orFault(rows::hasNext);
    }

    /** The reader finds an unclosed quote or an endless field only as it gets there, in whichever call that is. */
    private <T> T orFault(Supplier<T> read) {
        try {
            return read.get();
        } catch (CsvParseException | NoSuchElementException e) {
            throw (RuntimeException) file.fault(row == null ? 1 : line() + 1, 0, "a field is too long or its quotes do not close",
                    "fields in closed double quotes are accepted").initCause(e);
        }
    }

    /** The line on which the current row begins. */
    long line() {
        return row.getStartingLineNumber();
    }

    /** A field of the current row, stripped. */
    String field(int column) {
        return row.getField(column).strip();
    }

    /** Whether the current row is the last of a file that does not end with a line end, so that it may be cut. */
    boolean mayBeCut() {
        return !endsWithLineEnd && !hasMore();
    }

    /** The column of a name, in any case of letters. */
    OptionalInt find(String name) {
        for (int column = 0; column < header.size(); column++) {
            if (header.get(column).toLowerCase(Locale.ROOT).equals(name.toLowerCase(Locale.ROOT))) {
                return OptionalInt.of(column);
            }
        }
        return OptionalInt.empty();
    }

    /** The header for a message. */
    String columns() {
        return header.stream().map(RainFile::quoted).limit(12).collect(Collectors.joining(", "))
                + (header.size() > 12 ? ", ..." : "");
    }
}

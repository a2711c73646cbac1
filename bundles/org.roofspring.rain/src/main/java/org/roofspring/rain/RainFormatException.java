package org.roofspring.rain;

/**
 * A rain file that cannot be read. The message is one sentence: file, line and column, what was wrong, what is
 * accepted.
 */
public class RainFormatException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final long line;
    private final int column;

    /**
     * A fault at a place in a file.
     *
     * @param file     name of the file
     * @param line     line from 1; 0 when the fault is of the file as a whole
     * @param column   from 1: the character in a file of fixed columns, the field in a CSV; 0 when the fault is of
     *                 the line as a whole
     * @param problem  what was wrong
     * @param accepted what is accepted
     */
    public RainFormatException(String file, long line, int column, String problem, String accepted) {
        // one sentence on one line, whatever the file holds
        super((file + (line > 0 ? ", line " + line : "") + (column > 0 ? ", column " + column : "") + ": " + problem
                + "; " + accepted).replaceAll("\\p{Cntrl}+", " "));
        this.file = file;
        this.line = line;
        this.column = column;
    }

    /** Name of the file. */
    public String file() {
        return file;
    }

    /** Line from 1; 0 when the fault is of the file as a whole. */
    public long line() {
        return line;
    }

    /** From 1: the character in a file of fixed columns, the field in a CSV; 0 when of the line as a whole. */
    public int column() {
        return column;
    }
}

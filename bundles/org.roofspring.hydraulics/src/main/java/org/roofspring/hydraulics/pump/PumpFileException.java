package org.roofspring.hydraulics.pump;

/** Says in one sentence where a pump file is wrong, what was wrong and what is accepted. */
public class PumpFileException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String file;
    private final int line;
    private final int column;

    /**
     * @param file   name of the file
     * @param line   line, from 1; 0 where the whole file is meant
     * @param column column of the table, from 1; 0 where the whole line is meant
     * @param what   what was wrong and what is accepted
     */
    public PumpFileException(String file, int line, int column, String what) {
        super(file + (line > 0 ? ", line " + line : "") + (column > 0 ? ", column " + column : "") + ": " + what);
        this.file = file;
        this.line = line;
        this.column = column;
    }

    public String file() {
        return file;
    }

    public int line() {
        return line;
    }

    public int column() {
        return column;
    }
}

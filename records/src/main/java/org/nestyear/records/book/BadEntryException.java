package org.nestyear.records.book;

/** A value that a record table cannot hold; nothing was written. */
public final class BadEntryException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String column;
    private final String problem;
    private final String expected;
    private final int index;

    BadEntryException(int index, String column, String problem, String expected) {
        super(problem + "; expected " + expected);
        this.index = index;
        this.column = column;
        this.problem = problem;
        this.expected = expected;
    }

    /** Which of the changes that were to be made together, from 0. */
    public int index() {
        return index;
    }

    /** The column it stands in, or empty for the entry as a whole. */
    public String column() {
        return column;
    }

    /** What is wrong, as a sentence without its end. */
    public String problem() {
        return problem;
    }

    /** What was expected. */
    public String expected() {
        return expected;
    }
}

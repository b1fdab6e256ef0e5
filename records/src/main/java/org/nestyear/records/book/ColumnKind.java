package org.nestyear.records.book;

/** What a cell of a record table may hold. Every value is kept and exchanged in one plain spelling. */
public enum ColumnKind {
    /** Free words, never empty, without line breaks at the ends. */
    TEXT,
    /** One of a few words. */
    WORD,
    /** The Latin name of a bee in the catalogue. */
    SPECIES,
    /** A day, ISO 8601: {@code 2015-04-20}. */
    DATE,
    /** A local date and time at the site, ISO 8601 to the second: {@code 2015-04-20T07:30:00}. */
    MOMENT,
    /** A whole number. */
    WHOLE,
    /** A number. */
    NUMBER,
    /** {@code yes} or {@code no}. */
    YES_NO,
    /** The id of an entry of another table. */
    LINK
}

package org.nestyear.records.book;

/** Somebody changed the entry after the writer had read it; nothing was written. */
public final class ChangedSinceException extends IllegalStateException {
    private static final long serialVersionUID = 1L;

    ChangedSinceException(String sentence) {
        super(sentence);
    }
}

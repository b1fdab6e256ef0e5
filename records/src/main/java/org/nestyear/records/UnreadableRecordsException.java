package org.nestyear.records;

import java.nio.file.Path;

/** The file of the records is damaged, cannot be written, or comes from a newer version of the program. */
public final class UnreadableRecordsException extends IllegalStateException {
    private static final long serialVersionUID = 1L;

    UnreadableRecordsException(Path file, Throwable cause) {
        super(
                "the records in " + file
                        + " cannot be opened; expected a file that may be written, made by this version"
                        + " of Nestyear or an earlier one",
                cause);
    }
}

package org.nestyear.records;

import org.jspecify.annotations.Nullable;

/** Why records cannot be opened, copied or put back: one sentence with what, where and what was expected. */
public final class UnreadableRecordsException extends IllegalStateException {
    private static final long serialVersionUID = 1L;

    /** What is the matter, with the stable code of its message. */
    public enum Reason {
        /** The file is damaged. */
        DAMAGED("NY-RECORDS-DAMAGED"),
        /** It is no database, or holds something else than these records. */
        FOREIGN("NY-RECORDS-FOREIGN"),
        /** A newer version of the program made it. */
        NEWER("NY-RECORDS-NEWER"),
        /** It may not be written. */
        READ_ONLY("NY-RECORDS-READ-ONLY"),
        /** Another program has it. */
        IN_USE("NY-RECORDS-IN-USE"),
        /** There is nothing there. */
        MISSING("NY-RECORDS-MISSING"),
        /** The database server does not answer or does not let the program in. */
        SERVER("NY-RECORDS-SERVER"),
        /** What names the database cannot be understood. */
        SETTING("NY-RECORDS-SETTING"),
        /** A file of that name is there already. */
        EXISTS("NY-FILE-EXISTS"),
        /** A copy cannot be written. */
        UNWRITABLE("NY-FILE-UNREADABLE"),
        /** Its tables cannot be brought up to date. */
        UPDATE("NY-RECORDS-UPDATE");

        private final String code;

        Reason(String code) {
            this.code = code;
        }

        /** The stable code, {@code NY-…}. */
        public String code() {
            return code;
        }
    }

    private final Reason reason;
    private final String advice;

    /**
     * @param sentence what is wrong, where, and what was expected, ending in a full stop; never a password
     * @param advice a line beginning with "Maybe", or empty
     */
    public UnreadableRecordsException(Reason reason, String sentence, String advice, @Nullable Throwable cause) {
        super(sentence, cause);
        this.reason = reason;
        this.advice = advice;
    }

    public Reason reason() {
        return reason;
    }

    /** The sentence, without the advice. */
    public String sentence() {
        return String.valueOf(getMessage());
    }

    /** The advice line, or empty. */
    public String advice() {
        return advice;
    }
}

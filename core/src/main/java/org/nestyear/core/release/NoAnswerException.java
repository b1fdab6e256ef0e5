package org.nestyear.core.release;

/** No honest answer is possible for these inputs; the message says why in one sentence a keeper understands. */
public final class NoAnswerException extends IllegalStateException {
    private static final long serialVersionUID = 1L;

    private final String code;

    /**
     * Refuses.
     *
     * @param code stable code, {@code NY-…}
     * @param message why, in one sentence
     */
    public NoAnswerException(String code, String message) {
        super(message);
        this.code = code;
    }

    /** The stable code, {@code NY-…}. */
    public String code() {
        return code;
    }
}

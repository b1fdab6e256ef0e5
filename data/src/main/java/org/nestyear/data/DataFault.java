package org.nestyear.data;

/**
 * Something in a file that cannot be read as meant. Its message is one sentence, what was found and what was expected,
 * behind {@code FILE:LINE:COLUMN:}, and where a likely cause is known a second line that begins with "Maybe".
 */
public final class DataFault extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final FaultCode code;
    private final transient Position at;
    private final String found;
    private final String expected;
    private final String advice;

    /**
     * @param found what the file says, as the first half of a sentence
     * @param expected what was expected instead, as the words after "expected"
     * @param advice the likely cause or cure, as the words after "Maybe"; empty when there is none
     */
    public DataFault(FaultCode code, Position at, String found, String expected, String advice) {
        super(at + ": " + sentence(found, expected) + (advice.isEmpty() ? "" : "\n" + maybe(advice)));
        this.code = code;
        this.at = at;
        this.found = found;
        this.expected = expected;
        this.advice = advice;
    }

    /** The stable code. */
    public FaultCode code() {
        return code;
    }

    /** Where it stands. */
    public Position at() {
        return at;
    }

    /** What the file says. */
    public String found() {
        return found;
    }

    /** What was expected instead. */
    public String expected() {
        return expected;
    }

    /** The sentence without its place: what was found, and what was expected. */
    public String sentence() {
        return sentence(found, expected);
    }

    /** The advice line, beginning with "Maybe"; empty when there is none. */
    public String advice() {
        return advice.isEmpty() ? "" : maybe(advice);
    }

    private static String sentence(String found, String expected) {
        return found + "; expected " + expected + ".";
    }

    private static String maybe(String advice) {
        return "Maybe " + advice + ".";
    }
}

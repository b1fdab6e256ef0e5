package org.nestyear.app.service;

import org.nestyear.core.release.NoAnswerException;
import org.nestyear.data.DataFault;

/** Why a question is not answered, in words for the keeper: one sentence, and where it helps an advice line. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What kind of refusal it is. */
    public enum Kind {
        /** The question or a file is wrong. */
        BAD_INPUT,
        /** Nothing honest can be said for these inputs. */
        NO_ANSWER
    }

    private final Kind kind;
    private final String code;
    private final String place;
    private final String sentence;
    private final String advice;

    /**
     * @param code stable code, {@code NY-…}
     * @param place {@code FILE:LINE:COLUMN}, or empty when no file is at fault
     * @param sentence what is wrong and what was expected, ending in a full stop
     * @param advice a line beginning with "Maybe", or empty
     */
    public Refusal(Kind kind, String code, String place, String sentence, String advice) {
        super((place.isEmpty() ? "" : place + ": ") + sentence + (advice.isEmpty() ? "" : "\n" + advice));
        this.kind = kind;
        this.code = code;
        this.place = place;
        this.sentence = sentence;
        this.advice = advice;
    }

    /** A fault in a file. */
    public static Refusal of(DataFault fault) {
        return new Refusal(
                Kind.BAD_INPUT, fault.code().code(), fault.at().toString(), fault.sentence(), fault.advice());
    }

    /** The model has no honest answer. */
    public static Refusal of(NoAnswerException noAnswer) {
        return new Refusal(Kind.NO_ANSWER, noAnswer.code(), "", String.valueOf(noAnswer.getMessage()), "");
    }

    /** A wrong argument of a command. */
    public static Refusal usage(String sentence, String advice) {
        return new Refusal(Kind.BAD_INPUT, "NY-USAGE", "", sentence, advice);
    }

    public Kind kind() {
        return kind;
    }

    /** The stable code, {@code NY-…}. */
    public String code() {
        return code;
    }

    /** Where, as {@code FILE:LINE:COLUMN}, or empty. */
    public String place() {
        return place;
    }

    /** What is wrong and what was expected. */
    public String sentence() {
        return sentence;
    }

    /** The advice line, or empty. */
    public String advice() {
        return advice;
    }
}

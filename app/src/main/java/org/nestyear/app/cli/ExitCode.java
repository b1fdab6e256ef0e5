package org.nestyear.app.cli;

import org.nestyear.app.service.Refusal;

/** What the exit codes mean; part of the contract of the command line. */
final class ExitCode {
    static final int ANSWERED = 0;
    static final int DEFECT = 1;
    static final int BAD_INPUT = 2;
    static final int NO_ANSWER = 3;
    static final int PARTLY = 4;

    private ExitCode() {}

    static int of(Refusal refusal) {
        return refusal.kind() == Refusal.Kind.BAD_INPUT ? BAD_INPUT : NO_ANSWER;
    }
}

package org.nestyear.app.cli;

/** Says on the error stream how far a long piece of work is; silent while it is short. */
final class Progress {
    private static final long QUIET_NANOSECONDS = 1_000_000_000L;

    private final Surroundings surroundings;
    private final long begun = System.nanoTime();

    Progress(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    /** A step is reached. */
    void reached(String step) {
        if (System.nanoTime() - begun > QUIET_NANOSECONDS) {
            surroundings.err().println("… " + step);
            // Messages wait in a buffer otherwise until the work is done.
            surroundings.err().flush();
        }
    }
}

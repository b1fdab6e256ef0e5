package org.nestyear.app;

/** Starts the command line. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        System.exit(0);
    }
}

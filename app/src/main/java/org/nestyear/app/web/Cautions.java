package org.nestyear.app.web;

/** One short line where the work a page is about can hurt. Common practice, no source. */
final class Cautions {
    static final String OPENING =
            "Old nests hold fine dust, mould and mites: open them outdoors, wear a dust mask, wash your hands after.";
    private static final String LADDER = "On a ladder keep one hand on it: count first, write on the ground.";
    private static final String BLEACH =
            "Bleach burns skin and eyes: gloves, goggles, fresh air, never with other cleaners.";
    private static final String SPRAY = "Keep out of a sprayed place until the label lets people in again.";

    private Cautions() {}

    /** The line for a table, or empty. */
    static String of(String table) {
        return switch (table) {
            case "opening", "tally", "unemerged" -> OPENING;
            case "visit", "house", "nest" -> LADDER;
            case "rinse" -> BLEACH;
            case "spray" -> SPRAY;
            default -> "";
        };
    }
}

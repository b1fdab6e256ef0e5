package org.nestyear.app.picture;

/**
 * The measures of a picture, in its own units; text keeps about its size when the picture is shown at its width.
 *
 * @param width whole width
 * @param plotHeight height of the field the curve is drawn in
 * @param left room for the numbers of the upright axis
 * @param right room at the right
 * @param top room above the field
 * @param text height of the letters
 * @param dateTicks most dates to write along the axis
 * @param key start of the ids inside the picture, so that two pictures can stand on one page
 */
public record Frame(
        double width,
        double plotHeight,
        double left,
        double right,
        double top,
        double text,
        int dateTicks,
        String key) {
    /** For a laptop and for paper. */
    public static Frame wide(String name) {
        return new Frame(960, 330, 64, 18, 50, 17, 10, name + "-wide");
    }

    /** For a phone held upright. */
    public static Frame narrow(String name) {
        return new Frame(360, 240, 58, 12, 45, 15, 4, name + "-narrow");
    }

    double plotRight() {
        return width - right;
    }

    double plotBottom() {
        return top + plotHeight;
    }

    /** Height of one line of text with its air. */
    double line() {
        return text * 1.6;
    }
}

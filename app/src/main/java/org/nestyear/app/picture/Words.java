package org.nestyear.app.picture;

/** Room that words take in a picture, estimated without a font at hand, on the wide side. */
final class Words {
    private static final double WIDTH_OF_LETTER = 0.6;

    private Words() {}

    /** Width of a text in picture units for letters of this height. */
    static double width(String words, double text) {
        return words.length() * WIDTH_OF_LETTER * text;
    }
}

package org.nestyear.app.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayDeque;
import java.util.Deque;

/** Writes the text of one SVG picture, escaping what it is given. Not safe for threads; make one for each picture. */
final class SvgText {
    private static final int DECIMALS = 2;

    private final StringBuilder text = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /** Opens an element. Attributes are names and values by turns; values are numbers or texts. */
    SvgText open(String element, Object... attributes) {
        tag(element, attributes);
        text.append('>');
        open.push(element);
        return this;
    }

    /** Closes the element opened last. */
    SvgText close() {
        text.append("</").append(open.pop()).append('>');
        return this;
    }

    /** An element without content. */
    SvgText empty(String element, Object... attributes) {
        tag(element, attributes);
        text.append("/>");
        return this;
    }

    /** An element that holds only words. */
    SvgText words(String element, String words, Object... attributes) {
        open(element, attributes);
        text.append(escape(words));
        return close();
    }

    /** The finished text. */
    String finish() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("the element " + open.peek() + " is still open");
        }
        return text.toString();
    }

    /** A coordinate with at most two decimals and never in exponent form. */
    static String number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a picture cannot show the coordinate " + value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    static String escape(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    private void tag(String element, Object... attributes) {
        text.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            Object value = attributes[i + 1];
            String shown = value instanceof Number number ? number(number.doubleValue()) : escape(value.toString());
            text.append(' ').append(attributes[i]).append("=\"").append(shown).append('"');
        }
    }
}

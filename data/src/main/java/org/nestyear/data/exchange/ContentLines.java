package org.nestyear.data.exchange;

/** The lines of an iCalendar stream: escaped, folded and ended as RFC 5545 §3.1 and §3.3.11 ask. */
final class ContentLines {
    /** Longest line, octets of UTF-8, its end apart (§3.1). */
    private static final int LONGEST = 75;

    private static final String END = "\r\n";
    private static final int DELETE = 0x7F;
    private static final int ONE_OCTET_BELOW = 0x80;
    private static final int TWO_OCTETS_BELOW = 0x800;
    private static final int THREE_OCTETS_BELOW = 0x10000;

    private final StringBuilder out = new StringBuilder();

    /** A line whose value needs no escape: a date, a number, a word of the standard. */
    ContentLines plain(String nameAndParameters, String value) {
        fold(nameAndParameters + ":" + value);
        return this;
    }

    /** A line of free text. */
    ContentLines text(String nameAndParameters, String value) {
        return plain(nameAndParameters, escaped(value));
    }

    @Override
    public String toString() {
        return out.toString();
    }

    /**
     * Backslash, semicolon and comma behind a backslash, line ends as {@code \n}; control characters, which the standard
     * forbids, as spaces; halves of characters, which UTF-8 cannot hold, as a question mark.
     */
    static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        text.replace("\r\n", "\n").replace('\r', '\n').codePoints().forEach(character -> {
            switch (character) {
                case '\\' -> escaped.append("\\\\");
                case ';' -> escaped.append("\\;");
                case ',' -> escaped.append("\\,");
                case '\n' -> escaped.append("\\n");
                default -> escaped.appendCodePoint(allowed(character));
            }
        });
        return escaped.toString();
    }

    private static int allowed(int character) {
        if ((character < ' ' && character != '\t') || character == DELETE) {
            return ' ';
        }
        return character >= Character.MIN_SURROGATE && character <= Character.MAX_SURROGATE ? '?' : character;
    }

    /** Breaks between characters only, so that each line is UTF-8 by itself; a line that goes on begins with a space. */
    private void fold(String line) {
        int octets = 0;
        int at = 0;
        while (at < line.length()) {
            int character = line.codePointAt(at);
            int more = octets(character);
            if (octets + more > LONGEST) {
                out.append(END).append(' ');
                octets = 1;
            }
            out.appendCodePoint(character);
            octets += more;
            at += Character.charCount(character);
        }
        out.append(END);
    }

    private static int octets(int character) {
        if (character < ONE_OCTET_BELOW) {
            return 1;
        }
        if (character < TWO_OCTETS_BELOW) {
            return 2;
        }
        return character < THREE_OCTETS_BELOW ? 3 : 4;
    }
}

package org.nestyear.data;

import java.util.regex.Pattern;
import org.tomlj.Toml;
import org.tomlj.TomlParseResult;

/**
 * Parses TOML. The parser (tomlj 1.1.1) loses its way where a list ends directly behind a date, as in
 * {@code [2014-05-01]}, though that is good TOML; it is handed such a list with a blank before the bracket. Nothing of
 * which a place is told moves by that.
 */
public final class TomlText {
    private static final Pattern ENDS_IN_DATE = Pattern.compile(".*\\d{4}-\\d{2}-\\d{2}", Pattern.DOTALL);

    private TomlText() {}

    /** The parsed text, with its errors. */
    public static TomlParseResult parse(String text) {
        StringBuilder spaced = new StringBuilder(text.length() + 8);
        char quote = 0;
        boolean comment = false;
        int lineStart = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                quote = 0;
                comment = false;
                lineStart = i + 1;
            } else if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (!comment && (c == '"' || c == '\'')) {
                quote = c;
            } else if (!comment && c == '#') {
                comment = true;
            } else if (!comment
                    && c == ']'
                    && ENDS_IN_DATE.matcher(text.substring(lineStart, i)).matches()) {
                spaced.append(' ');
            }
            spaced.append(c);
        }
        return Toml.parse(spaced.toString());
    }
}

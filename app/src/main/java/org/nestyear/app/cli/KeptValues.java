package org.nestyear.app.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.nestyear.app.service.Refusal;

/** Values of an entry as they are typed on a command line: {@code column=value}. */
final class KeptValues {
    private KeptValues() {}

    /** The values by column. */
    static Map<String, String> of(List<String> words) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String word : words) {
            int at = word.indexOf('=');
            if (at <= 0) {
                throw Refusal.usage(
                        "\"" + word + "\" is no value of an entry; expected column=value, such as more_plugged=12.",
                        "Maybe a value that holds spaces lacks its quotation marks.");
            }
            if (values.putIfAbsent(word.substring(0, at).strip(), word.substring(at + 1)) != null) {
                throw Refusal.usage(
                        "the column \"" + word.substring(0, at) + "\" is told twice; expected each column once.", "");
            }
        }
        return values;
    }
}

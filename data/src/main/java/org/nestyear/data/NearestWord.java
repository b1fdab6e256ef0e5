package org.nestyear.data;

import java.util.Collection;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Finds the known word a mistyped one was probably meant to be, by edit distance (Levenshtein). */
public final class NearestWord {
    private NearestWord() {}

    /** The nearest of the known words, or null when none is within a third of its length (at least two edits). */
    public static @Nullable String find(String word, Collection<String> known) {
        String given = word.toLowerCase(Locale.ROOT);
        String best = null;
        int least = Integer.MAX_VALUE;
        for (String candidate : known) {
            int distance = distance(given, candidate.toLowerCase(Locale.ROOT));
            int allowed = Math.max(2, candidate.length() / 3);
            if (distance <= allowed && distance < candidate.length() && distance < least) {
                best = candidate;
                least = distance;
            }
        }
        return best;
    }

    /** Fewest insertions, deletions and replacements that turn {@code a} into {@code b}. */
    static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}

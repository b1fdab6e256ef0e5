package org.nestyear.app.service;

import java.util.Collection;
import org.nestyear.data.NearestWord;

/** Advice for a word that was probably mistyped. */
public final class Spelling {
    private Spelling() {}

    /** A line that names the nearest known word, or nothing when none is near. */
    public static String advice(String word, Collection<String> known) {
        String nearest = NearestWord.find(word, known);
        return nearest == null ? "" : "Maybe \"" + nearest + "\" was meant.";
    }
}

package org.nestyear.core.forage;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.place.Region;
import org.nestyear.core.place.Site;

/**
 * A region: where it lies, what it is called and when its bloom words fall.
 *
 * @param name as it stands in a sentence
 * @param latLowDeg southern edge of its box, degrees north
 * @param latHighDeg northern edge
 * @param lonLowDeg western edge, degrees east
 * @param lonHighDeg eastern edge
 * @param wordsLatDeg latitude at which its words fall on their dates, degrees north
 * @param wordsHeightM height at which they do, m
 * @param words its bloom words
 */
public record RegionBloom(
        Region region,
        String name,
        double latLowDeg,
        double latHighDeg,
        double lonLowDeg,
        double lonHighDeg,
        double wordsLatDeg,
        double wordsHeightM,
        Map<BloomWord, WordDates> words) {
    public RegionBloom {
        words = Map.copyOf(words);
    }

    /** True when a place lies in its box. */
    boolean holds(Site site) {
        return site.latitudeDeg() >= latLowDeg
                && site.latitudeDeg() <= latHighDeg
                && site.longitudeDeg() >= lonLowDeg
                && site.longitudeDeg() <= lonHighDeg;
    }

    /** Dates of a word, or null where the region has none. */
    @Nullable
    WordDates dates(BloomWord word) {
        return words.get(word);
    }
}

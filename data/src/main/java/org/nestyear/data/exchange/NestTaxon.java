package org.nestyear.data.exchange;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What nested, by its scientific name.
 *
 * @param scientificName genus, species or subspecies: one to three words, without author
 * @param family or null when not known here
 * @param vernacularName the common name, or null
 */
public record NestTaxon(
        String scientificName,
        @Nullable String family,
        @Nullable String vernacularName) {
    /**
     * Genera of bees that nest in ready holes, and their cuckoos. Families after C. D. Michener, The Bees of the World,
     * 2nd edition, 2007; from memory.
     */
    private static final Map<String, String> FAMILIES = Map.ofEntries(
            Map.entry("Osmia", "Megachilidae"),
            Map.entry("Megachile", "Megachilidae"),
            Map.entry("Hoplitis", "Megachilidae"),
            Map.entry("Heriades", "Megachilidae"),
            Map.entry("Chelostoma", "Megachilidae"),
            Map.entry("Anthidium", "Megachilidae"),
            Map.entry("Ashmeadiella", "Megachilidae"),
            Map.entry("Coelioxys", "Megachilidae"),
            Map.entry("Stelis", "Megachilidae"),
            Map.entry("Hylaeus", "Colletidae"),
            Map.entry("Ceratina", "Apidae"),
            Map.entry("Xylocopa", "Apidae"));

    private static final int SUBSPECIES_WORDS = 3;

    /**
     * @throws IllegalArgumentException if the name is not one to three words that begin with a capital
     */
    public NestTaxon {
        if (!scientificName.matches("[A-Z][a-z-]+( [a-z-]+){0,2}")) {
            throw new IllegalArgumentException("\"" + scientificName
                    + "\" is no scientific name; expected a genus, or genus and species like Osmia lignaria");
        }
    }

    /** A bee, with its family where the genus is one that nests in ready holes. */
    public static NestTaxon bee(String scientificName, @Nullable String vernacularName) {
        return new NestTaxon(scientificName, FAMILIES.get(scientificName.split(" ", -1)[0]), vernacularName);
    }

    /** {@code genus}, {@code species} or {@code subspecies}. */
    public String rank() {
        int words = scientificName.split(" ", -1).length;
        return words == SUBSPECIES_WORDS ? "subspecies" : words == 1 ? "genus" : "species";
    }

    /** The first word of the name. */
    public String genus() {
        return scientificName.split(" ", -1)[0];
    }
}

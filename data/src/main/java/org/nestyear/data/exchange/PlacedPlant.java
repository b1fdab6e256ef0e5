package org.nestyear.data.exchange;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A stand of one plant near a site.
 *
 * @param id stable and the same in every file
 * @param site where the bees are that fly to it
 * @param name the plant's name
 * @param latinName or null when not told
 * @param coverM2 ground it covers, m², 0 or more, or null when not told
 * @param target true if the bees are kept for its sake
 * @param distanceM metres from the site, 0 or more, or null when not told
 * @param directionDeg from the site, degrees clockwise from north, 0 to 360, or null when not told
 * @param blooms what was seen of its bloom, in any order
 */
public record PlacedPlant(
        String id,
        PlacedSite site,
        String name,
        @Nullable String latinName,
        @Nullable Double coverM2,
        boolean target,
        @Nullable Double distanceM,
        @Nullable Double directionDeg,
        List<SeenBloom> blooms) {
    /** Farther than any bee flies or anybody means; a slip of the units. */
    private static final double FARTHEST_M = 20_000;

    /**
     * @throws IllegalArgumentException if the id is blank or a number is impossible
     */
    public PlacedPlant {
        if (id.isBlank()) {
            throw new IllegalArgumentException("plant \"" + name + "\" has no id");
        }
        check("cover of", name, coverM2, Double.MAX_VALUE, "m2");
        check("distance to", name, distanceM, FARTHEST_M, "m");
        check("direction to", name, directionDeg, 360, "degrees");
        blooms = List.copyOf(blooms);
    }

    private static void check(String what, String name, @Nullable Double value, double most, String unit) {
        if (value != null && !(value >= 0 && value <= most)) {
            throw new IllegalArgumentException(what + " " + name + " is " + value + " " + unit + ", not 0 to " + most);
        }
    }

    /**
     * Bloom of one year as somebody saw it.
     *
     * @param first day of the first open flowers, or null when not seen
     * @param full day of full bloom, or null when not seen
     * @param last day of the last flowers, or null when not seen
     */
    public record SeenBloom(
            @Nullable LocalDate first,
            @Nullable LocalDate full,
            @Nullable LocalDate last) {
        /**
         * @throws IllegalArgumentException if no day was seen, or they are out of order
         */
        public SeenBloom {
            List<LocalDate> seen = Stream.of(
                            Optional.ofNullable(first), Optional.ofNullable(full), Optional.ofNullable(last))
                    .flatMap(Optional::stream)
                    .toList();
            if (seen.isEmpty()) {
                throw new IllegalArgumentException("a bloom needs at least one day on which it was seen");
            }
            if (!seen.equals(seen.stream().sorted().toList())) {
                throw new IllegalArgumentException("days of bloom out of order: " + seen);
            }
        }

        /** The earliest day that was seen. */
        public LocalDate earliest() {
            return first != null ? first : full != null ? full : Objects.requireNonNull(last);
        }
    }
}

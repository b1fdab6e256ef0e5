package org.nestyear.core.season;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Bees of one species, origin and year kept together.
 *
 * @param species Latin name
 * @param origin {@code local} or a place name
 * @param females female cocoons, 0 or more
 * @param males male cocoons, 0 or more; a batch holds at least one cocoon
 * @param wintered where they spent the winter
 * @param chillDays days cold so far, counted on the day of the plan; only for the fridge, else null
 * @param chillC temperature of the cold store, °C; only for the fridge, else null
 */
public record Batch(
        String species,
        String origin,
        int females,
        int males,
        Wintered wintered,
        @Nullable Double chillDays,
        @Nullable Double chillC) {
    public Batch {
        if (females < 0 || males < 0 || females + males == 0) {
            throw new IllegalArgumentException(
                    "a batch of " + females + " females and " + males + " males holds no bees to plan for");
        }
        if (wintered == Wintered.FRIDGE && (chillDays == null || chillC == null)) {
            throw new IllegalArgumentException("a batch wintered in the fridge needs its days and its temperature");
        }
    }

    /**
     * One batch out of several that are the same but for their numbers.
     *
     * @throws IllegalArgumentException if they are of several species or did not winter together
     */
    public static Batch together(List<Batch> batches) {
        Batch first = batches.get(0);
        if (!batches.stream().allMatch(first::isAlike)) {
            throw new IllegalArgumentException("the batches differ in species or winter; a plan holds bees of one"
                    + " species that wintered together, so put each into a file of its own");
        }
        boolean local = batches.stream().allMatch(b -> b.origin().equals(first.origin()));
        return new Batch(
                first.species(),
                local ? first.origin() : "several places",
                batches.stream().mapToInt(Batch::females).sum(),
                batches.stream().mapToInt(Batch::males).sum(),
                first.wintered(),
                first.chillDays(),
                first.chillC());
    }

    /** True for bees of the same species that wintered alike. */
    public boolean isAlike(Batch other) {
        return species.equalsIgnoreCase(other.species)
                && wintered == other.wintered
                && Objects.equals(chillDays, other.chillDays)
                && Objects.equals(chillC, other.chillC);
    }

    /** The same bees with other days of chill; without them where none are counted. */
    public Batch withChillDays(@Nullable Double days) {
        return new Batch(species, origin, females, males, wintered, days, chillC);
    }

    /** Cocoons of both sexes. */
    public int cocoons() {
        return females + males;
    }
}

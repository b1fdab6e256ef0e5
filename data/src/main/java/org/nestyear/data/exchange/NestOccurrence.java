package org.nestyear.data.exchange;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.losses.Cause;

/**
 * Bees of one kind found in one nest, house or site at one time: an opening, or a count of plugged tunnels.
 *
 * @param id of the entry it comes from; the same in every file, so that a second file replaces the first
 * @param site where it was found
 * @param house the keeper's name for the house, or null; written only where {@link Disclosure#names()}
 * @param nest the keeper's name for the nest, or null; written only where {@link Disclosure#names()}
 * @param taxon what nested
 * @param from first day of the observation
 * @param to last day of it, not before {@code from}; the same for one day
 * @param stock whether somebody put these bees, or their parents, there
 * @param nativeHere whether the kind belongs to the place
 * @param stage what the living were, or null when not told
 * @param found what was counted
 * @param holeWidthMm inner width of the tunnels, mm, above 0, or null when not told
 * @param recordedBy who counted, or null; written only where {@link Disclosure#people()}
 * @param modified when the entry was last changed, or null when not told
 */
public record NestOccurrence(
        UUID id,
        PlacedSite site,
        @Nullable String house,
        @Nullable String nest,
        NestTaxon taxon,
        LocalDate from,
        LocalDate to,
        Stock stock,
        NativeHere nativeHere,
        @Nullable Stage stage,
        Found found,
        @Nullable Double holeWidthMm,
        @Nullable String recordedBy,
        @Nullable Instant modified) {
    /**
     * @throws IllegalArgumentException if the observation ends before it begins, or the width is impossible
     */
    public NestOccurrence {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException(
                    "observation " + id + " ends on " + to + ", before it begins on " + from);
        }
        if (holeWidthMm != null && !(holeWidthMm > 0 && holeWidthMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a hole " + holeWidthMm + " mm wide; that must be above 0");
        }
    }

    /**
     * An id for a part of an entry that has none of its own, like one nest of an opening: the same parts give the same id.
     *
     * @param parts ids and names that together stand for it once, in a fixed order
     */
    public static UUID idOf(String... parts) {
        return NamedUuid.of(String.join("\n", parts));
    }

    /** Whether the bees are kept. */
    public enum Stock {
        /** Put there by a keeper, or the young of bees that were. */
        MANAGED,
        /** Came by themselves. */
        WILD,
        NOT_TOLD
    }

    /** Whether the kind belongs to the place. */
    public enum NativeHere {
        NATIVE,
        INTRODUCED,
        NOT_TOLD
    }

    /** What the living were when counted. */
    public enum Stage {
        LARVA,
        /** Grown, fed grub that has settled for winter. */
        PREPUPA,
        PUPA,
        ADULT
    }

    /**
     * What was counted; null where nobody counted.
     *
     * @param pluggedTunnels tunnels closed by a plug
     * @param cells brood cells, living and lost together
     * @param females living females
     * @param males living males
     * @param unsexed living bees whose sex nobody judged
     * @param losses lost cells by cause
     */
    public record Found(
            @Nullable Integer pluggedTunnels,
            @Nullable Integer cells,
            @Nullable Integer females,
            @Nullable Integer males,
            @Nullable Integer unsexed,
            Map<Cause, Integer> losses) {
        /**
         * @throws IllegalArgumentException if nothing was counted, a count is below 0, or the living and the lost are
         *     more than the cells
         */
        public Found {
            Map<Cause, Integer> sorted = new EnumMap<>(Cause.class);
            sorted.putAll(losses);
            losses = Collections.unmodifiableMap(sorted);
            check("plugged tunnels", pluggedTunnels);
            check("cells", cells);
            check("females", females);
            check("males", males);
            check("bees not sexed", unsexed);
            losses.forEach((cause, count) -> check(cause.label(), count));
            if (pluggedTunnels == null && cells == null && sum(females, males, unsexed) == null && losses.isEmpty()) {
                throw new IllegalArgumentException("an observation in which nothing was counted");
            }
            Integer live = sum(females, males, unsexed);
            int lost = losses.values().stream().mapToInt(Integer::intValue).sum();
            if (cells != null && (live == null ? 0 : live) + lost > cells) {
                throw new IllegalArgumentException(
                        live + " living and " + lost + " lost are more than the " + cells + " cells");
            }
        }

        /** Tunnels counted from outside, and nothing more. */
        public static Found plugged(int tunnels) {
            return new Found(tunnels, null, null, null, null, Map.of());
        }

        /** Living bees of both sexes and of none judged, or null when nobody counted them. */
        public @Nullable Integer live() {
            return sum(females, males, unsexed);
        }

        /** Lost cells of all causes. */
        public int lost() {
            return losses.values().stream().mapToInt(Integer::intValue).sum();
        }

        /** True unless all that was counted came to nothing. */
        public boolean isPresent() {
            return isAbove0(pluggedTunnels) || isAbove0(cells) || isAbove0(live()) || lost() > 0;
        }

        private static boolean isAbove0(@Nullable Integer count) {
            return count != null && count > 0;
        }

        private static @Nullable Integer sum(@Nullable Integer... counts) {
            Integer sum = null;
            for (Integer count : counts) {
                if (count != null) {
                    sum = (sum == null ? 0 : sum) + count;
                }
            }
            return sum;
        }

        private static void check(String what, @Nullable Integer count) {
            if (count != null && count < 0) {
                throw new IllegalArgumentException(count + " " + what + "; a count is 0 or more");
            }
        }
    }
}

package org.nestyear.core.losses;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What one nest held.
 *
 * @param house the house it hung in; empty when not told
 * @param nest its name; empty when not told
 * @param kind its kind, such as reed or tray; empty when not told
 * @param year the year it was filled in; null when not told
 * @param cells cells in it, 1 or more
 * @param lost cells lost by cause, each 0 or more, together not more than {@code cells}
 */
public record OpenedNest(
        String house, String nest, String kind, @Nullable Integer year, int cells, Map<Cause, Integer> lost) {
    public OpenedNest {
        EnumMap<Cause, Integer> copy = new EnumMap<>(Cause.class);
        copy.putAll(lost);
        lost = Collections.unmodifiableMap(copy);
        int all = copy.values().stream().mapToInt(Integer::intValue).sum();
        if (cells < 1 || all > cells || copy.values().stream().anyMatch(number -> number < 0)) {
            throw new IllegalArgumentException("a nest of " + cells + " cells cannot have lost " + copy);
        }
    }

    /** Cells lost to a cause. */
    public int lostTo(Cause cause) {
        return lost.getOrDefault(cause, 0);
    }

    /** Cells lost to any cause. */
    public int lostInAll() {
        return lost.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Cells with a living bee. */
    public int alive() {
        return cells - lostInAll();
    }

    /** True when any cell holds disease or a parasite. */
    public boolean hasDiseaseOrParasite() {
        return lost.entrySet().stream().anyMatch(entry -> entry.getKey().isDiseaseOrParasite() && entry.getValue() > 0);
    }
}

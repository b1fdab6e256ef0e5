package org.nestyear.core.losses;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import org.nestyear.core.count.Limits;
import org.nestyear.core.count.ShareLimits;

/**
 * Two groups of nests side by side: the first share less the second, by Newcombe's hybrid of their limits (method 10 of
 * Newcombe 1998b), each with its own design effect.
 *
 * @param first name of the first group
 * @param second name of the second
 * @param one share of the first
 * @param other share of the second
 * @param difference limits of the first share less the second
 */
public record Comparison(String first, String second, CellShare one, CellShare other, Limits difference) {
    /** The name of all the others, where more than two groups are compared. */
    public static final String THE_OTHERS = "the others";

    /** True when chance alone does not easily make such a difference. */
    public boolean isMoreThanChance() {
        return !difference.contains(0);
    }

    /** The difference found. */
    public double found() {
        return one.share() - other.share();
    }

    /**
     * Compares two groups, or each of several with all the others; the level is then raised so that all comparisons together
     * hold at the level asked for (Bonferroni).
     *
     * @param group name of the group of a nest; nests with an empty name are left out
     * @param found cells that count, of a nest
     * @param level coverage of all differences together, above 0 and below 1
     * @return nothing when fewer than two groups are told
     */
    public static List<Comparison> of(
            List<OpenedNest> nests, Function<OpenedNest, String> group, ToIntFunction<OpenedNest> found, double level) {
        Map<String, List<OpenedNest>> groups = new TreeMap<>();
        for (OpenedNest nest : nests) {
            if (!group.apply(nest).isEmpty()) {
                groups.computeIfAbsent(group.apply(nest), name -> new ArrayList<>())
                        .add(nest);
            }
        }
        List<String> names = List.copyOf(groups.keySet());
        if (names.size() < 2) {
            return List.of();
        }
        if (names.size() == 2) {
            return List.of(pair(groups, names.get(0), names.get(1), found, level));
        }
        double each = 1 - (1 - level) / names.size();
        return names.stream()
                .map(name -> pair(groups, name, THE_OTHERS, found, each))
                .toList();
    }

    private static Comparison pair(
            Map<String, List<OpenedNest>> groups,
            String name,
            String against,
            ToIntFunction<OpenedNest> found,
            double level) {
        List<OpenedNest> members = new ArrayList<>();
        List<OpenedNest> rest = new ArrayList<>();
        groups.forEach((group, nests) -> (group.equals(name) ? members : rest).addAll(nests));
        List<OpenedNest> all = new ArrayList<>(members);
        all.addAll(rest);
        OptionalDouble together = CellShare.of(all, found, level).designEffect();
        CellShare one = CellShare.of(members, found, together, level);
        CellShare other = CellShare.of(rest, found, together, level);
        return new Comparison(
                name,
                against,
                one,
                other,
                ShareLimits.difference(
                        new ShareLimits.Estimate(one.share(), one.limits()),
                        new ShareLimits.Estimate(other.share(), other.limits())));
    }
}

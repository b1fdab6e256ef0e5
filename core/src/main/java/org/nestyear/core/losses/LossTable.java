package org.nestyear.core.losses;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/**
 * What was lost, cause by cause. A cell has one cause, so that the shares add up.
 *
 * @param nests what was opened, one nest or more
 * @param lines a line for each cause that was looked for, most cells first
 * @param lost all losses together
 * @param level coverage of the limits
 */
public record LossTable(List<OpenedNest> nests, List<Line> lines, CellShare lost, double level) {
    public LossTable {
        nests = List.copyOf(nests);
        lines = List.copyOf(lines);
    }

    /** One cause. */
    public record Line(Cause cause, CellShare share) {}

    /**
     * The table of these nests.
     *
     * @param looked the causes that were looked for
     * @param level coverage of the limits, above 0 and below 1
     */
    public static LossTable of(List<OpenedNest> nests, List<Cause> looked, double level) {
        List<Line> lines = new ArrayList<>();
        for (Cause cause : looked) {
            lines.add(new Line(cause, CellShare.of(nests, nest -> nest.lostTo(cause), level)));
        }
        lines.sort((a, b) ->
                Double.compare(b.share().total().found(), a.share().total().found()));
        return new LossTable(nests, lines, CellShare.of(nests, OpenedNest::lostInAll, level), level);
    }

    /** Cells in all. */
    public int cells() {
        return nests.stream().mapToInt(OpenedNest::cells).sum();
    }

    /** Cells with a living bee. */
    public int alive() {
        return nests.stream().mapToInt(OpenedNest::alive).sum();
    }

    /** Cells lost to a cause. */
    public int lostTo(Cause cause) {
        return nests.stream().mapToInt(nest -> nest.lostTo(cause)).sum();
    }

    /** The share of cells lost to any of some causes. */
    public CellShare share(Cause... causes) {
        return CellShare.of(nests, nest -> sum(nest, causes), level);
    }

    /** Nests with disease or a parasite in any cell. */
    public int nestsIll() {
        return (int) nests.stream().filter(OpenedNest::hasDiseaseOrParasite).count();
    }

    /** The share lost in each group of nests, by name; nests whose group is not told are left out. */
    public Map<String, CellShare> byGroup(Function<OpenedNest, String> group, ToIntFunction<OpenedNest> found) {
        Map<String, List<OpenedNest>> groups = new TreeMap<>();
        for (OpenedNest nest : nests) {
            groups.computeIfAbsent(group.apply(nest), name -> new ArrayList<>()).add(nest);
        }
        groups.remove("");
        Map<String, CellShare> shares = new TreeMap<>();
        groups.forEach((name, members) -> shares.put(name, CellShare.of(members, found, level)));
        return shares;
    }

    private static int sum(OpenedNest nest, Cause... causes) {
        int sum = 0;
        for (Cause cause : causes) {
            sum += nest.lostTo(cause);
        }
        return sum;
    }
}

package org.nestyear.core.release;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.core.bloom.BloomForecast;
import org.nestyear.core.forage.FlowerLine;
import org.nestyear.core.nesting.NestingResult;

/** Adds up, over all possible seasons, what the bees want each day and how far each plant is in bloom. */
final class LineBuilder {
    private LineBuilder() {}

    /**
     * The mean day by day after the last release of each member.
     *
     * @param members this season's members, at least one, each with its release worked out
     * @param bloom the bloom they were made with
     * @param plants how many plants were told
     */
    static FlowerLine of(List<MemberModel> members, BloomForecast bloom, int plants) {
        int days = members.get(0).weather().days();
        double[] nesting = new double[days];
        double[] cells = new double[days];
        double[] other = new double[days];
        List<double[]> heights = new ArrayList<>();
        for (int p = 0; p < plants; p++) {
            heights.add(new double[days]);
        }
        int seasons = members.stream().mapToInt(MemberModel::courses).sum();
        for (MemberModel member : members) {
            for (int k = 0; k < member.courses(); k++) {
                NestingResult nest = member.nest(k);
                double[] community = bloom.toldCommunity(member.weather(), member.lateDays(k));
                List<double[]> blooms = bloom.plants(member.weather(), member.lateDays(k));
                for (int d = 0; d < days; d++) {
                    double wanted = nest.nesting(d) * member.cellsOfAFemale(d) / seasons;
                    nesting[d] += nest.nesting(d) / seasons;
                    cells[d] += wanted;
                    other[d] += wanted * community[d];
                    for (int p = 0; p < plants; p++) {
                        heights.get(p)[d] += blooms.get(p)[d] / seasons;
                    }
                }
            }
        }
        return new FlowerLine(members.get(0).weather().date(0), nesting, cells, other, heights);
    }
}

package org.nestyear.core.forage;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;

/** What a season wants and how far its plants are in bloom, day by day. */
public final class FlowerLine {
    private final LocalDate first;
    private final double[] nesting;
    private final double[] cells;
    private final double[] otherCells;
    private final List<double[]> bloom;

    /**
     * Takes the days.
     *
     * @param first the first day
     * @param nesting females that nest each day, in bees
     * @param cells cells the bees could build each day were food no limit; as long
     * @param otherCells cells a day that the other bloom feeds; as long
     * @param bloom for each told plant its share of full bloom by day, 0 to 1; as long
     */
    public FlowerLine(LocalDate first, double[] nesting, double[] cells, double[] otherCells, List<double[]> bloom) {
        this.first = first;
        this.nesting = nesting.clone();
        this.cells = cells.clone();
        this.otherCells = otherCells.clone();
        this.bloom = bloom.stream().map(double[]::clone).toList();
    }

    /** Days held. */
    int days() {
        return cells.length;
    }

    /** The date of a day. */
    LocalDate date(int day) {
        return first.plusDays(day);
    }

    /** The first day from which on fewer females nest than a share of the most; all days held where that never comes. */
    int end(double share) {
        int last = days();
        double most = Arrays.stream(nesting).max().orElse(0);
        while (last > 0 && nesting[last - 1] < most * share) {
            last--;
        }
        return last;
    }

    /** Cells wanted on a day. */
    double cells(int day) {
        return cells[day];
    }

    /** Cells that other bloom feeds on a day. */
    double otherCells(int day) {
        return otherCells[day];
    }

    /** Share of full bloom of a told plant on a day. */
    double bloom(int plant, int day) {
        return bloom.get(plant)[day];
    }
}

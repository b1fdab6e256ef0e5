package org.nestyear.core.forage;

import java.time.LocalDate;
import java.util.List;

/** What a season wants and how far its plants are in bloom, day by day. */
public final class FlowerLine {
    private final LocalDate first;
    private final double[] cells;
    private final double[] otherCells;
    private final List<double[]> bloom;

    /**
     * Takes the days.
     *
     * @param first the first day
     * @param cells cells the bees could build each day were food no limit
     * @param otherCells cells a day that the other bloom feeds; as long
     * @param bloom for each told plant its share of full bloom by day, 0 to 1; as long
     */
    public FlowerLine(LocalDate first, double[] cells, double[] otherCells, List<double[]> bloom) {
        this.first = first;
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

package org.nestyear.core.season;

import java.time.LocalDate;
import java.util.List;

/**
 * A plant in reach.
 *
 * @param name the keeper's name for it
 * @param coverM2 area of its crown or stand, m², 0 when not told
 * @param target whether the keeper wants bees in its bloom
 * @param bloom when it blooms
 * @param pastBloom days of full bloom in past years as the keeper wrote them down, one a year
 * @param stand what and where it is, for the count of its flowers
 */
public record Plant(
        String name, double coverM2, boolean target, BloomDates bloom, List<LocalDate> pastBloom, PlantStand stand) {
    public Plant {
        pastBloom = List.copyOf(pastBloom);
    }

    /** A plant of which no more is told. */
    public Plant(String name, double coverM2, boolean target, BloomDates bloom, List<LocalDate> pastBloom) {
        this(name, coverM2, target, bloom, pastBloom, PlantStand.UNTOLD);
    }

    /** A plant without dates of past years. */
    public Plant(String name, double coverM2, boolean target, BloomDates bloom) {
        this(name, coverM2, target, bloom, List.of());
    }
}

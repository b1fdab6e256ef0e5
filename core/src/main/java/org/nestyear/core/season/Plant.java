package org.nestyear.core.season;

/**
 * A plant in reach.
 *
 * @param name the keeper's name for it
 * @param coverM2 area of its crown or stand, m², 0 when not told
 * @param target whether the keeper wants bees in its bloom
 * @param bloom when it blooms
 */
public record Plant(String name, double coverM2, boolean target, BloomDates bloom) {}

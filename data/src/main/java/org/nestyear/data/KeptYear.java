package org.nestyear.data;

import org.jspecify.annotations.Nullable;

/**
 * One year of a keeper's stock.
 *
 * @param year its spring
 * @param femalesOut female cocoons put out that spring, 0 or more
 * @param daughters living female cocoons taken from that year's nests, or null
 * @param cocoons living cocoons of both sexes taken from them, or null
 * @param cells cells built, or null
 * @param bought females bought before that spring and among those put out
 * @param given females given away before that spring
 * @param joined wild females that nested with them
 */
public record KeptYear(
        int year,
        double femalesOut,
        @Nullable Double daughters,
        @Nullable Double cocoons,
        @Nullable Double cells,
        double bought,
        double given,
        double joined) {}

package org.nestyear.core.bloom.spring;

import java.util.List;

/**
 * What the spring index says of one year. Days of the year, 1 for 1 January.
 *
 * @param leaf index of first leaf: the rounded mean of the plants
 * @param bloom index of first bloom: the rounded mean of the plants
 * @param leafByPlant first leaf of lilac, first and second honeysuckle
 * @param bloomByPlant first bloom of the same
 */
public record SpringDates(int leaf, int bloom, List<Integer> leafByPlant, List<Integer> bloomByPlant) {
    public SpringDates {
        leafByPlant = List.copyOf(leafByPlant);
        bloomByPlant = List.copyOf(bloomByPlant);
    }
}

package org.nestyear.core.release;

import java.time.LocalDate;

/**
 * Another way to choose the date, and what it would cost.
 *
 * @param date the date it names (the median over weather years when it depends on the weather)
 * @param earliest earliest of those dates
 * @param latest latest of those dates
 * @param cost mean share of the best score lost, 0 to 1
 */
public record Alternative(LocalDate date, LocalDate earliest, LocalDate latest, double cost) {}

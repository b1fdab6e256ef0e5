package org.nestyear.core.season;

import java.time.LocalDate;

/**
 * A spray that somebody has announced nearby.
 *
 * @param date the day of it
 * @param what what and where, in the keeper's words; empty when not told
 */
public record Spray(LocalDate date, String what) {}

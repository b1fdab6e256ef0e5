package org.nestyear.app.service;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * How a stock grew, and how likely it comes to a number.
 *
 * @param counts a table of counts, one a year
 * @param target number to come to, above 0; null for twice the last count
 * @param withinYears within so many years after the last count, above 0
 * @param level coverage of the intervals, above 0 and below 1
 */
public record TrendQuestion(Path counts, @Nullable Double target, double withinYears, double level) {}

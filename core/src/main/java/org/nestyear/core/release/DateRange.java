package org.nestyear.core.release;

import java.time.LocalDate;

/** An event's date: early, middle and late over the weather years (10th, 50th and 90th percentile). */
public record DateRange(LocalDate early, LocalDate middle, LocalDate late) {}

package org.nestyear.core.release;

import java.time.LocalDate;

/** The dates that cannot be told from the best, both ends included, and whether the best lies at an edge. */
public record ReleaseWindow(LocalDate from, LocalDate to, Edge edge) {}

package org.nestyear.core.release;

import java.time.LocalDate;

/** Cocoons to put out on one day. */
public record Portion(LocalDate date, int females, int males) {}

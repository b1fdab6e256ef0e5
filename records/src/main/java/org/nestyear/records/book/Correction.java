package org.nestyear.records.book;

import java.time.Instant;

/**
 * A value that was replaced.
 *
 * @param at when
 * @param who the person who replaced it
 * @param column its column
 * @param was what stood there, empty if nothing
 * @param became what stands there since, empty if nothing
 * @param takenBack whether the correction was taken back
 */
public record Correction(Instant at, String who, String column, String was, String became, boolean takenBack) {}

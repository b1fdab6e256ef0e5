package org.nestyear.core.bloom.fit;

/**
 * A forecast day of bloom with its band, as day numbers.
 *
 * @param early one year in ten blooms before this
 * @param middle the forecast
 * @param late one year in ten blooms after this
 */
public record BloomBand(double early, double middle, double late) {}

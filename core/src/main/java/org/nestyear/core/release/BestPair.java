package org.nestyear.core.release;

import java.time.LocalDate;

/**
 * The best of all pairs of dates, were there tunnels enough.
 *
 * @param tried how many pairs were tried, with each share of the batch counted
 * @param first first date
 * @param second second date
 * @param share share of the batch put out on the first, 0 to 1
 * @param gain what the pair wins on average as a share of the best single date's score, negative for a loss; where
 *     tunnels run out it wins less
 */
public record BestPair(int tried, LocalDate first, LocalDate second, double share, double gain) {}

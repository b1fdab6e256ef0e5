/** Quantiles, intervals and the only source of randomness. */
@NullMarked
package org.nestyear.core.stats;

import org.jspecify.annotations.NullMarked;

/** What a keeper tells us about one season: batches, nests, plants, aim. */
@NullMarked
package org.nestyear.core.season;

import org.jspecify.annotations.NullMarked;

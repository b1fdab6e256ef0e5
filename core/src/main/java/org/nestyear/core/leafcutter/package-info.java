/** Leafcutter bees: warmth to emergence, parasitoids on the way, holding, second generation, winter as prepupae. */
@NullMarked
package org.nestyear.core.leafcutter;

import org.jspecify.annotations.NullMarked;

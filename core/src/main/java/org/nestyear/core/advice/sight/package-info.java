/** Is what I see normal, and what else could it be. */
@NullMarked
package org.nestyear.core.advice.sight;

import org.jspecify.annotations.NullMarked;

/** How far bees fly: where they find home from, and where they really work. */
@NullMarked
package org.nestyear.core.reach;

import org.jspecify.annotations.NullMarked;

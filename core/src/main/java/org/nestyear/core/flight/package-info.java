/** Hours of a day in which bees can fly. */
@NullMarked
package org.nestyear.core.flight;

import org.jspecify.annotations.NullMarked;

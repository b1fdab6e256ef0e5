/** Daily weather, hours from days, radiation, and the weather of one season. */
@NullMarked
package org.nestyear.core.weather;

import org.jspecify.annotations.NullMarked;

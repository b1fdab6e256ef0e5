/** Chill and heat summed over hours of air temperature, after published models. */
@NullMarked
package org.nestyear.core.bloom.hourly;

import org.jspecify.annotations.NullMarked;

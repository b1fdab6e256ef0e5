/** Females and males told apart by size. */
@NullMarked
package org.nestyear.core.sexing;

import org.jspecify.annotations.NullMarked;

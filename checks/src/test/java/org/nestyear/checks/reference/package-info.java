/** The model against published values, reference programs and measured data. */
@NullMarked
package org.nestyear.checks.reference;

import org.jspecify.annotations.NullMarked;

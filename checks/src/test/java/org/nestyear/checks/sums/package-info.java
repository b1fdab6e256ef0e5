/** Small calculators against published numbers and reference data. */
@NullMarked
package org.nestyear.checks.sums;

import org.jspecify.annotations.NullMarked;

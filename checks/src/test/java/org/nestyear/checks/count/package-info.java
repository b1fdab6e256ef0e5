/** Intervals and sample sizes against published tables and reference programs of statistics. */
@NullMarked
package org.nestyear.checks.count;

import org.jspecify.annotations.NullMarked;

/** Bloom models against reference numbers and observed bloom. */
@NullMarked
package org.nestyear.checks.bloom;

import org.jspecify.annotations.NullMarked;

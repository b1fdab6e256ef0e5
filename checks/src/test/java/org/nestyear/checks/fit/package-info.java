/** The joint fit of the two-stage emergence clock, and the page that says what it found. */
@NullMarked
package org.nestyear.checks.fit;

import org.jspecify.annotations.NullMarked;

/** Sexing against a published record of two groups and against cocoons whose sex came to light. */
@NullMarked
package org.nestyear.checks.sexing;

import org.jspecify.annotations.NullMarked;

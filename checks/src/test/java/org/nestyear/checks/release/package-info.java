/** The release curve: against the prototype's figures, and the ways in which it must move. */
@NullMarked
package org.nestyear.checks.release;

import org.jspecify.annotations.NullMarked;

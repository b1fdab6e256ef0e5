/** Bloom dates against observed ones. */
@NullMarked
package org.nestyear.checks.bloom;

import org.jspecify.annotations.NullMarked;

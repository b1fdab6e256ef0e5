/** Development in the nest against published days. */
@NullMarked
package org.nestyear.checks.brood;

import org.jspecify.annotations.NullMarked;

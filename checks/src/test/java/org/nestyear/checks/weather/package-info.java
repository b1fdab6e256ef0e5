/** Invented weather against the stations it imitates. */
@NullMarked
package org.nestyear.checks.weather;

import org.jspecify.annotations.NullMarked;

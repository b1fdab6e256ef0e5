/** The plant list and the needs of cells against the data and studies they come from. */
@NullMarked
package org.nestyear.checks.forage;

import org.jspecify.annotations.NullMarked;

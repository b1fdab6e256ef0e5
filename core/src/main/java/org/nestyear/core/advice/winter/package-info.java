/** What a log of the winter store shows: one small rule each. */
@NullMarked
package org.nestyear.core.advice.winter;

import org.jspecify.annotations.NullMarked;

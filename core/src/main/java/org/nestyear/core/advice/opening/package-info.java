/** What opened nests show, and what to do about it: one small rule each. */
@NullMarked
package org.nestyear.core.advice.opening;

import org.jspecify.annotations.NullMarked;

/** Counting: what a few opened cocoons or nests say of all of them, and how many to look at. */
@NullMarked
package org.nestyear.core.count;

import org.jspecify.annotations.NullMarked;

/** Winter chill, storage limits and the share that will not emerge. */
@NullMarked
package org.nestyear.core.winter;

import org.jspecify.annotations.NullMarked;

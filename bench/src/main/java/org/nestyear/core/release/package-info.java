/** Benchmarks of the release model; in its package because they time its parts. */
@NullMarked
package org.nestyear.core.release;

import org.jspecify.annotations.NullMarked;

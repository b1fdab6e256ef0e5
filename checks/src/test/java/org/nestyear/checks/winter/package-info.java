/** Cold, storage limits and the share that never comes out, against published limits. */
@NullMarked
package org.nestyear.checks.winter;

import org.jspecify.annotations.NullMarked;

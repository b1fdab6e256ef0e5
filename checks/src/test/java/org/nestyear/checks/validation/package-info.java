/** How well the model does against the outside world, put together in one page. */
@NullMarked
package org.nestyear.checks.validation;

import org.jspecify.annotations.NullMarked;

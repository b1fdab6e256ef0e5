/** Findings and jobs: one small class a rule, each with number, limit, basis and caution. */
@NullMarked
package org.nestyear.core.advice;

import org.jspecify.annotations.NullMarked;

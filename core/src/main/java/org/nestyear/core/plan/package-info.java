/** The whole answer: release, jobs, findings, and how well it is founded. */
@NullMarked
package org.nestyear.core.plan;

import org.jspecify.annotations.NullMarked;

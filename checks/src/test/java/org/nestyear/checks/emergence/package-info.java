/** When bees come out, against three laboratory winters, published wintering trials and field counts. */
@NullMarked
package org.nestyear.checks.emergence;

import org.jspecify.annotations.NullMarked;

/** What the tests of this module share: the reference data, the repository's own files, and the comparison of numbers. */
@NullMarked
package org.nestyear.checks;

import org.jspecify.annotations.NullMarked;

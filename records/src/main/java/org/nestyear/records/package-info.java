/** The keeper's own records in one database file. */
@NullMarked
package org.nestyear.records;

import org.jspecify.annotations.NullMarked;

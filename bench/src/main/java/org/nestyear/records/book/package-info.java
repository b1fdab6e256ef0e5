/** A large invented account, to measure the records with. */
@NullMarked
package org.nestyear.records.book;

import org.jspecify.annotations.NullMarked;

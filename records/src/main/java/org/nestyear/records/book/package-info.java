/** What a keeper writes down through the years: the tables, how an entry is made, corrected and taken back. */
@NullMarked
package org.nestyear.records.book;

import org.jspecify.annotations.NullMarked;

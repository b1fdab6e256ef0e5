package org.nestyear.app.book;

/**
 * Which entries are to be shown.
 *
 * @param table name of the table
 * @param site name of a site, or empty for all
 * @param year year of their day, or 0 for all
 * @param most how many at most
 * @param skip how many to pass over first
 */
public record EntriesQuestion(String table, String site, int year, int most, int skip) {}

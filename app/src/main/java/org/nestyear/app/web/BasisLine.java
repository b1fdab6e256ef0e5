package org.nestyear.app.web;

/**
 * A parameter as a page shows it.
 *
 * @param name what it is
 * @param value value and unit
 * @param range low to high
 * @param basis how it is known
 * @param source where it comes from, and a note
 */
public record BasisLine(String name, String value, String range, String basis, String source) {}

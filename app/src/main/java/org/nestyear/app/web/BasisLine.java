package org.nestyear.app.web;

/**
 * A parameter as a page shows it.
 *
 * @param name what it is
 * @param value value and unit
 * @param range low to high
 * @param basis how it is known
 * @param source where it comes from, and a note
 * @param anchor its place on this page, or empty
 * @param link where the page of sources has it, or empty
 */
public record BasisLine(
        String name, String value, String range, String basis, String source, String anchor, String link) {
    /** The same, at a place of its own on the page. */
    BasisLine at(String place) {
        return new BasisLine(name, value, range, basis, source, place, link);
    }

    /** The same, with the place where the page of sources has it. */
    BasisLine linked(String address) {
        return new BasisLine(name, value, range, basis, source, anchor, address);
    }
}

package org.nestyear.core.species;

import org.nestyear.core.source.ParameterTable;

/**
 * A bee species of the catalogue.
 *
 * @param latinName for instance {@code Osmia lignaria}
 * @param commonName for instance {@code blue orchard bee}
 * @param parameters its own rows completed by the rows common to its kind
 */
public record Species(String latinName, String commonName, ParameterTable parameters) {}

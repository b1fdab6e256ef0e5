package org.nestyear.core.species;

import java.util.List;
import java.util.Optional;

/**
 * The species that can be planned for.
 *
 * @param species in catalogue order
 * @param fingerprint stable text that changes when any number changes
 */
public record Catalogue(List<Species> species, String fingerprint) {
    public Catalogue {
        species = List.copyOf(species);
    }

    /** The species with this Latin name, capitals aside. */
    public Optional<Species> find(String latinName) {
        return species.stream()
                .filter(s -> s.latinName().equalsIgnoreCase(latinName.strip()))
                .findFirst();
    }

    /** All Latin names, in catalogue order. */
    public List<String> names() {
        return species.stream().map(Species::latinName).toList();
    }
}

package org.nestyear.app.service;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.species.Species;
import org.nestyear.data.CatalogueFiles;

/** A bee of either kind, mason or leafcutter, by its Latin name. */
public final class EitherBee {
    private EitherBee() {}

    /**
     * The mason or leafcutter bee with this Latin name.
     *
     * @throws Refusal if the catalogue has none
     */
    public static Species named(String latinName) {
        return CatalogueFiles.leafcutters()
                .find(latinName)
                .or(() -> PlanService.catalogue().find(latinName))
                .orElseThrow(() -> {
                    List<String> names = all().stream().map(Species::latinName).toList();
                    return Refusal.usage(
                            "\"" + latinName + "\" is not a species of the catalogue; expected one of "
                                    + String.join(", ", names) + ".",
                            Spelling.advice(latinName, names));
                });
    }

    /** All bees of either kind. */
    public static List<Species> all() {
        List<Species> all = new ArrayList<>(PlanService.catalogue().species());
        all.addAll(CatalogueFiles.leafcutters().species());
        return all;
    }

    /** Whether it is a leafcutter bee. */
    public static boolean isLeafcutter(Species species) {
        return CatalogueFiles.leafcutters().find(species.latinName()).isPresent();
    }

    /** What a keeper handles in winter: cocoons of mason bees, cells of leafcutters. */
    public static String young(Species species) {
        return isLeafcutter(species) ? "cells" : "cocoons";
    }

    /** How it nests, and how many of it are wanted. */
    static ParameterTable nesting(Species species) {
        ParameterTable own = isLeafcutter(species)
                ? species.parameters().completedBy(CatalogueFiles.sums("leafcutter_nesting"))
                : species.parameters();
        return own.completedBy(CatalogueFiles.sums("stocking"));
    }
}

package org.nestyear.app.service;

import java.util.List;
import java.util.Locale;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.Species;
import org.nestyear.core.stocking.Settlers;
import org.nestyear.core.stocking.Spread;
import org.nestyear.core.stocking.TunnelNeed;
import org.nestyear.data.CatalogueFiles;

/**
 * How many tunnels for so many females.
 *
 * @param females female cocoons put out
 * @param nesting females expected to nest
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the catalogue or the version
 */
public record TunnelsAnswer(
        Species species, int females, Spread nesting, TunnelNeed need, List<Parameter> basis, String fingerprint) {
    public TunnelsAnswer {
        basis = List.copyOf(basis);
    }

    /**
     * Answers the question.
     *
     * @param females female cocoons put out, 1 or more
     * @throws Refusal if nothing is known of how many cells a female of this species builds
     */
    public static TunnelsAnswer of(Species species, int females) {
        ReadLog read = new ReadLog(species.parameters().completedBy(CatalogueFiles.sums("stocking")));
        Spread nesting = Settlers.of(read).nesting(females);
        TunnelNeed need = TunnelNeed.of(nesting.value(), nesting.high(), cellsRow(species), read);
        Fingerprint print = new Fingerprint("");
        print.add(species.latinName());
        print.add(females);
        print.add(read.read());
        return new TunnelsAnswer(species, females, nesting, need, read.read(), print.digits());
    }

    /**
     * The row with the cells a female builds.
     *
     * @throws Refusal if there is none
     */
    static String cellsRow(Species species) {
        String id = "cells_per_female_" + slug(species);
        ParameterTable stocking = CatalogueFiles.sums("stocking");
        if (!stocking.has(id) || !species.parameters().has("settling")) {
            throw new Refusal(
                    Refusal.Kind.NO_ANSWER,
                    "NY-TUNNELS-SPECIES",
                    "",
                    "How many cells a female of " + species.latinName()
                            + " builds is not in the catalogue, so her tunnels cannot be counted.",
                    "");
        }
        return id;
    }

    /** A species as it stands in the names of rows. */
    static String slug(Species species) {
        return species.latinName().toLowerCase(Locale.ROOT).replace(' ', '_');
    }
}

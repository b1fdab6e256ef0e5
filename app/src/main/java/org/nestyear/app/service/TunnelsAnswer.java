package org.nestyear.app.service;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
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
 * @param secondBrood tunnels more that a second brood of the same summer may want, or null for bees that have none
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the catalogue or the version
 */
public record TunnelsAnswer(
        Species species,
        int females,
        Spread nesting,
        TunnelNeed need,
        @Nullable Spread secondBrood,
        List<Parameter> basis,
        String fingerprint) {
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
        ReadLog read = new ReadLog(EitherBee.nesting(species));
        Spread nesting = Settlers.of(read).nesting(females);
        TunnelNeed need = TunnelNeed.of(nesting.value(), nesting.high(), cellsRow(species), read);
        @Nullable
        Spread second = EitherBee.isLeafcutter(species) ? secondBrood(nesting, cellsRow(species), read) : null;
        Fingerprint print = new Fingerprint("");
        print.add(species.latinName());
        print.add(females);
        print.add(read.read());
        return new TunnelsAnswer(species, females, nesting, need, second, read.read(), print.digits());
    }

    /** Tunnels for females of a second brood: cells built, of which so many fly at once, as many females, that stay. */
    private static Spread secondBrood(Spread nesting, String cells, ReadLog read) {
        Parameter share = read.row("second_brood_share");
        Spread females =
                Settlers.of(read).nesting(nesting.value() * read.value(cells) * read.value("second_brood_females"));
        double each = read.value("tunnels_per_female");
        return new Spread(
                        each * females.value() * share.low(),
                        each * females.value() * share.value(),
                        each * females.value() * share.high())
                .roundedUp();
    }

    /**
     * The row with the cells a female builds.
     *
     * @throws Refusal if there is none
     */
    static String cellsRow(Species species) {
        String id = "cells_per_female_" + slug(species);
        ParameterTable stocking = CatalogueFiles.sums("stocking");
        if (!stocking.has(id) || !EitherBee.nesting(species).has("settling")) {
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

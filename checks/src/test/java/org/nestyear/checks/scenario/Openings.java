package org.nestyear.checks.scenario;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.nestyear.core.advice.opening.OpeningCase;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.losses.LossTable;
import org.nestyear.core.losses.OpenedNest;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.species.BeeKind;
import org.nestyear.data.CatalogueFiles;

/** Opened nests, invented, among which every rule has its case. */
final class Openings {
    private Openings() {}

    /** The numbers the rules are held against, as the command reads them. */
    static ParameterTable numbers() {
        return CatalogueFiles.sums("losses")
                .completedBy(CatalogueFiles.sums("counting"))
                .completedBy(CatalogueFiles.sums("hygiene"))
                .completedBy(CatalogueFiles.sums("mason_bees"));
    }

    /** Of both kinds of bees: sound and few, sound and many, each cause alone in a few and in most cells, all at once. */
    static List<OpeningCase> all() {
        List<OpeningCase> cases = new ArrayList<>();
        for (BeeKind bees : BeeKind.values()) {
            cases.add(of(bees, 6, Map.of(), false));
            cases.add(of(bees, 60, Map.of(), true));
            Map<Cause, Integer> everything = new EnumMap<>(Cause.class);
            for (Cause cause : Cause.values()) {
                cases.add(of(bees, 60, Map.of(cause, 1), false));
                cases.add(of(bees, 60, Map.of(cause, 6), false));
                everything.put(cause, 1);
            }
            cases.add(of(bees, 40, everything, true));
        }
        return cases;
    }

    /** Nests of fourteen cells that all lost the same; every third nest one cell more where there is room. */
    static OpeningCase of(BeeKind bees, int nests, Map<Cause, Integer> lost, boolean bought) {
        List<OpenedNest> opened = new ArrayList<>();
        for (int i = 0; i < nests; i++) {
            opened.add(new OpenedNest("", "", "", null, 14 + i % 3, lost));
        }
        return new OpeningCase(numbers(), bees, LossTable.of(opened, List.of(Cause.values()), 0.95), bought);
    }
}

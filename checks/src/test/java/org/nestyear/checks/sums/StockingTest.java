package org.nestyear.checks.sums;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.release.Draft;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.Species;
import org.nestyear.core.stats.Draws;
import org.nestyear.core.stocking.Settlers;
import org.nestyear.core.stocking.Spread;
import org.nestyear.core.stocking.TunnelNeed;
import org.nestyear.data.CatalogueFiles;

/** From cocoons to females that nest and to tunnels, and back. */
@Tag("reference")
class StockingTest {
    private static ReadLog read(Species species) {
        return new ReadLog(species.parameters().completedBy(CatalogueFiles.sums("stocking")));
    }

    /**
     * Bosch et al. 2021, Insects 12:56 (abstract): 99 nesting females of O. cornuta were 54.4 % of those that came out; that
     * share lies within what the catalogue takes (McCabe et al. 2024: 30 to 60 % usual).
     */
    @Test
    void anotherTrialLiesWithinTheSettlingTaken() {
        Settlers settlers =
                Settlers.of(read(CatalogueFiles.load().find("Osmia cornuta").orElseThrow()));
        Spread nesting = settlers.nesting(198);
        assertThat(99.0).isBetween(nesting.low(), nesting.high());
        assertThat(0.544).isBetween(settlers.staying().low(), settlers.staying().high());
    }

    /** Giejdasz et al. 2016, J. Apic. Sci. 60:75: females of O. bicornis use 1 to 5 tunnels; 40 % use one, 7 % five. */
    @Test
    void aFemaleFillsAsManyTunnelsAsWereCounted() {
        Species species = CatalogueFiles.load().find("Osmia bicornis").orElseThrow();
        TunnelNeed need = TunnelNeed.of(1000, 1000, "cells_per_female_osmia_bicornis", read(species));
        assertThat(need.used() / 1000).isBetween(1.0, 3.0);
    }

    /** The plan's job "add tunnels" asks for as many as the small sum says, for stocks of 150 and 400 female cocoons. */
    @Test
    void aPlanAsksForTheSameTunnels() {
        for (int females : new int[] {150, 400}) {
            Draft draft = Draft.washington(9);
            draft.females = females;
            draft.males = 2 * females;
            draft.tunnels(30);
            Job job = draft.plan().jobs().stream()
                    .filter(each -> each.id().equals("add-tunnels"))
                    .findFirst()
                    .orElseThrow();
            double more = ((Quantity) job.number().arguments().get(0)).value();
            ReadLog read = read(draft.bees());
            Spread nesting = Settlers.of(read).nesting(females);
            TunnelNeed need = TunnelNeed.of(nesting.value(), nesting.high(), "cells_per_female_osmia_lignaria", read);
            assertThat(need.needed()).isEqualTo(30 + more);
        }
    }

    /** Seeded: there and back again; more females never want fewer tunnels; ranges hold their middle. */
    @Test
    void stockingBehaves() {
        Draws draws = new Draws(27);
        for (Species species : CatalogueFiles.load().species()) {
            String cells = "cells_per_female_"
                    + species.latinName().toLowerCase(Locale.ROOT).replace(' ', '_');
            if (!CatalogueFiles.sums("stocking").has(cells)) {
                continue;
            }
            ReadLog read = read(species);
            Settlers settlers = Settlers.of(read);
            for (int i = 0; i < 100; i++) {
                double cocoons = 1 + 5000 * draws.uniform();
                Spread nesting = settlers.nesting(cocoons);
                Spread back = settlers.cocoons(new Spread(nesting.value(), nesting.value(), nesting.value()));
                assertThat(back.value()).isCloseTo(cocoons, within(1e-6));
                assertThat(back.low()).isLessThan(cocoons);
                assertThat(back.high()).isGreaterThan(cocoons);
                TunnelNeed need = TunnelNeed.of(nesting.value(), nesting.high(), cells, read);
                TunnelNeed more = TunnelNeed.of(nesting.value() + 3, nesting.high() + 3, cells, read);
                assertThat(need.needed()).isGreaterThanOrEqualTo(20).isGreaterThanOrEqualTo(need.used());
                assertThat(need.high()).isGreaterThanOrEqualTo(need.needed());
                assertThat(more.needed()).isGreaterThanOrEqualTo(need.needed());
                assertThat(more.used()).isGreaterThanOrEqualTo(need.used());
            }
        }
        assertThatThrownBy(() -> new Spread(3, 2, 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Spread(Double.NaN, 2, 4)).isInstanceOf(IllegalArgumentException.class);
    }
}

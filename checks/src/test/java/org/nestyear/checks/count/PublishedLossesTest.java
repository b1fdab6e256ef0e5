package org.nestyear.checks.count;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.SharedData;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.data.CatalogueFiles;

/** Shares of living cells against the open table of trap nests in Toronto (Xie et al. 2022). */
@Tag("reference")
class PublishedLossesTest {
    private static final Map<String, String> ROWS =
            Map.of("Osmia_lignaria", "live_share_mason", "Megachile_rotundata", "live_share_leafcutter");

    @Test
    void livingSharesAreThoseOfTheOpenTable() {
        ParameterTable losses = CatalogueFiles.sums("losses");
        int compared = 0;
        for (NamedCsvRecord row : SharedData.rows("megachile/toronto_species_summary_derived.csv")) {
            String species = row.getField("species");
            double share = SharedData.number(row, "alive") / SharedData.number(row, "cells");
            String id = ROWS.get(species);
            if (id != null) {
                assertThat(losses.value(id)).as(species).isEqualTo(share, within(5e-4));
                compared++;
            }
            if (species.equals("Osmia_pumila") || species.equals("Osmia_caerulescens")) {
                Parameter mason = losses.get("live_share_mason");
                assertThat(share).as(species).isBetween(mason.low(), mason.high());
                compared++;
            }
        }
        assertThat(compared).isEqualTo(4);
    }
}

package org.nestyear.checks.forage;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.SharedData;
import org.nestyear.core.forage.Flora;
import org.nestyear.core.forage.FlowerYield;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
import org.nestyear.data.CatalogueFiles;

/** What cells need and how far bees go, against the studies. */
class NeedsTest {
    private static final Flora FLORA = CatalogueFiles.flora();

    private static double value(String id) {
        return FLORA.numbers().value(id);
    }

    private static FlowerYield yieldOf(String name) {
        return FlowerYield.of(FLORA.find(name).orElseThrow(), null, FLORA, new ReadLog(FLORA.numbers()));
    }

    /**
     * Müller et al. 2006: 7 to 1,100 flowers a larva over 41 bees, times about 2.5 because some 40 % reaches one bee; and
     * (summary of the paper) 85 % of the bees need 30 flowers or more, which the log-normal between the ends should show.
     */
    @Test
    void aLarvaNeedsWhatFortyOneBeesNeed() {
        Parameter need = FLORA.numbers().get("flowers_per_larva");
        double middle = Math.sqrt(7 * 1100.0);
        // The least and the most of 41 stand 1.97 standard deviations from the middle: 1/41 of a normal on each side.
        double sd = Math.log(1100 / middle) / 1.97;
        Comparison flowers = new Comparison("flowers a larva, all pollen taken", 1);
        flowers.add("middle", need.value(), middle);
        flowers.add("low of eight in ten", need.low(), middle * Math.exp(-1.2816 * sd));
        flowers.add("high of eight in ten", need.high(), middle * Math.exp(1.2816 * sd));
        flowers.check(3);
        Comparison share = new Comparison("flowers that 15 % of the bees need less than", 8);
        share.add("Müller et al. 2006", middle * Math.exp(-1.0364 * sd), 30);
        share.check(1);
        Comparison times = new Comparison("times the flowers because others take pollen too", 0.01);
        times.add("Müller et al. 2006", 1 / value("pollen_reachable"), 2.5);
        times.check(1);
    }

    /**
     * Visits are no flowers emptied: a bee goes to more flowers for a cell than hold its pollen. Osmia cornuta on apple
     * made 22,252 visits in 15 days (Vicens &amp; Bosch 2000b) for some 9 cells (Bosch et al. 2021); O. lignaria some 25
     * loads of 75 flowers (Bosch &amp; Kemp 2001, from memory).
     */
    @Test
    void noCellTakesMoreFlowersThanItsMotherVisits() {
        assertThat(yieldOf("apple").flowersACell().middle()).isBetween(100.0, 25 * 75.0);
        assertThat(yieldOf("apple").flowersACell().high()).isLessThan(Math.min(25 * 75.0, 22_252 / 9.15));
    }

    /** Florets a cell of Megachile wheeleri (Gordon 2007): 26.3 million grains over those of a floret. */
    @Test
    void composites() {
        Comparison florets = new Comparison("florets a larva", 5);
        florets.add("yarrow", value("florets_per_larva_yarrow"), 26.3e6 / 1670);
        florets.add("goldenrod", value("florets_per_larva_goldenrod"), 26.3e6 / 4580);
        florets.check(2);
    }

    /** Cane, Gardner &amp; Harrison 2011: the nectar of about 125 alfalfa flowers a cell; 47 % of 90 mg is sugar. */
    @Test
    void theNectarOfACell() {
        Comparison nectar = new Comparison("alfalfa flowers, and mg of sugar, a cell", 2);
        nectar.add("flowers", value("sugar_per_cell_mg") / value("sugar_per_alfalfa_flower_mg"), 125);
        nectar.add("sugar", value("sugar_per_cell_mg"), 0.47 * 90);
        nectar.check(2);
    }

    /** By hand: 185.26 open flowers, each 2.6 days, 88 / 0.4 flowers a cell. */
    @Test
    void appleFeedsAThirdOfACellADayAndSquareMetre() {
        Comparison cells = new Comparison("cells a day and m²", 1e-9);
        cells.add("apple", yieldOf("apple").cellsM2().middle(), 185.26 / 2.6 / 220);
        cells.add("dandelion", yieldOf("dandelion").cellsM2().middle(), 56.80 / 7 / 5);
        cells.check(2);
    }

    /** Rings: every mean flight seen in a city lies in the full ring (Hofmann et al. 2020), half stop at 300 m (Zurbuchen). */
    @Test
    void ringsHoldTheFlightsSeen() {
        int means = 0;
        int stops = 0;
        for (NamedCsvRecord row : SharedData.rows("forage/foraging_distances_megachilidae.csv")) {
            double metres = SharedData.number(row, "distance_m");
            if (row.getField("measure").equals("mark-resight")
                    && row.getField("statistic").contains("mean")) {
                assertThat(metres).as(row.getField("species")).isLessThanOrEqualTo(value("full_ring_m"));
                means++;
            }
            if (row.getField("statistic").equals("half of females stop beyond")) {
                assertThat(metres).isEqualTo(value("half_ring_m"));
                stops++;
            }
        }
        assertThat(List.of(means, stops)).isEqualTo(List.of(3, 1));
        // Zurbuchen et al. 2010c, as quoted by Hofmann et al. 2020: cells fall by 31 % at +200 m and 46 % at +500 m.
        assertThat(value("half_ring_weight")).isBetween(1 - 0.54, 1 - 0.31);
    }
}

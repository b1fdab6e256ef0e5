package org.nestyear.checks.sexing;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.SharedData;
import org.nestyear.core.sexing.Group;
import org.nestyear.core.sexing.GroupFit;
import org.nestyear.core.sexing.KnownSexes;
import org.nestyear.core.sexing.SexCount;
import org.nestyear.core.sexing.Sized;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.data.CatalogueFiles;

/** Groups against R mclust on the Old Faithful record; sexes against Möllmann et al. 2025, whose bees came out. */
@Tag("reference")
class TwoGroupsTest {
    /** Azzalini and Bowman 1990, 272 eruptions; groups by mclust 6.0.0, E and V; its BIC has the other sign. */
    @ParameterizedTest
    @CsvSource({
        "waiting, equal_variance",
        "waiting, unequal_variance",
        "eruptions, equal_variance",
        "eruptions, unequal_variance"
    })
    void theGroupsOfARecordEveryoneKnows(String variable, String model) {
        List<Sized> sizes = new ArrayList<>();
        for (NamedCsvRecord row : SharedData.rows("reference/stats/faithful.csv")) {
            sizes.add(Sized.of(SharedData.number(row, variable)));
        }
        GroupFit fit = GroupFit.two(sizes, model.equals("equal_variance"));
        Comparison groups = new Comparison(variable + " " + model + ", mean and sd, in its unit", 1e-3);
        Comparison shares = new Comparison(variable + " " + model + ", weight", 1e-4);
        Comparison likelihood = new Comparison(variable + " " + model + ", log likelihood and BIC", 1e-4);
        for (NamedCsvRecord row : SharedData.rows("reference/stats/faithful_mixture_1d.csv")) {
            if (row.getField("variable").equals(variable)
                    && row.getField("model").equals(model)) {
                Group group = fit.groups().get((int) SharedData.number(row, "component") - 1);
                groups.add("mean", group.mean(), SharedData.number(row, "mean"));
                groups.add("sd", group.sd(), SharedData.number(row, "sd"));
                shares.add("weight", group.weight(), SharedData.number(row, "weight"));
                likelihood.add("log likelihood", fit.logLikelihood(), SharedData.number(row, "loglik"));
                likelihood.add("BIC", fit.bic(), -SharedData.number(row, "bic_mclust"));
            }
        }
        groups.check(4);
        shares.check(2);
        likelihood.check(4);
        assertThat(fit.bic()).isLessThan(GroupFit.one(sizes).bic());
    }

    @Test
    void theCutOfThatRecord() {
        List<Sized> sizes = new ArrayList<>();
        for (NamedCsvRecord row : SharedData.rows("reference/stats/faithful.csv")) {
            sizes.add(Sized.of(SharedData.number(row, "eruptions")));
        }
        SexCount count = SexCount.byGroups(sizes, 0.9, 1);
        Comparison cut = new Comparison("equal-posterior cut of the eruptions, min", 1e-3);
        for (NamedCsvRecord row : SharedData.rows("reference/stats/faithful_cutpoints.csv")) {
            if (row.getField("variable").equals("eruptions")) {
                cut.add("eruptions", count.cut(), SharedData.number(row, "equal_posterior_cut"));
            }
        }
        cut.check(1);
    }

    /**
     * Real lots of four places. An interval of 90 % holds the real number in three or four of four lots, but for one set of
     * lots in twenty; the cut is right for 85 % or more of all cocoons.
     */
    @ParameterizedTest
    @CsvSource({"O. bicornis, osmia_bicornis", "O. cornuta, osmia_cornuta"})
    void realSexesOfWholeLots(String name, String slug) throws IOException {
        ParameterTable table = CatalogueFiles.sums("sexing");
        KnownSexes known = new KnownSexes(
                new Group(table.value("weight_m_mg_" + slug), table.value("weight_m_sd_mg_" + slug), 1),
                new Group(table.value("weight_f_mg_" + slug), table.value("weight_f_sd_mg_" + slug), 1),
                table.value("weight_lots_sd_mg"),
                table.value("female_share"),
                table.value("female_share_worth"));
        int lots = 0;
        int held = 0;
        int heldKnown = 0;
        int right = 0;
        int rightKnown = 0;
        int all = 0;
        for (String place :
                List.of("Konstanz", "Pfalz", "Schärding", name.equals("O. bicornis") ? "Greifswald" : "Harz")) {
            List<Sized> sizes = new ArrayList<>();
            List<Boolean> female = new ArrayList<>();
            cocoons(name, place, sizes, female);
            long females = female.stream().filter(f -> f).count();
            SexCount count = SexCount.byGroups(sizes, 0.9, 1);
            SexCount cut = SexCount.byKnown(sizes, known, 0.9, 1);
            int good = right(sizes, female, count.cut());
            System.out.printf(
                    "%s %s: %d cocoons, %d females; groups %.0f (%.0f to %.0f), %d right; known sizes %.0f (%.0f to %.0f), %d right%n",
                    name,
                    place,
                    sizes.size(),
                    females,
                    count.females(),
                    count.low(),
                    count.high(),
                    good,
                    cut.females(),
                    cut.low(),
                    cut.high(),
                    right(sizes, female, cut.cut()));
            held += females >= count.low() && females <= count.high() ? 1 : 0;
            heldKnown += females >= cut.low() && females <= cut.high() ? 1 : 0;
            right += good;
            rightKnown += right(sizes, female, cut.cut());
            all += sizes.size();
            lots++;
        }
        assertThat(lots).isEqualTo(4);
        assertThat(held)
                .as("intervals of groups that hold the real number, of 4")
                .isGreaterThanOrEqualTo(3);
        assertThat(heldKnown).as("intervals of known sizes that hold it, of 4").isGreaterThanOrEqualTo(3);
        assertThat(right / (double) all).isBetween(0.85, 0.96);
        assertThat(rightKnown / (double) all).isBetween(0.85, 0.96);
    }

    private static int right(List<Sized> sizes, List<Boolean> female, double cut) {
        int right = 0;
        for (int i = 0; i < sizes.size(); i++) {
            right += sizes.get(i).from() >= cut == female.get(i) ? 1 : 0;
        }
        return right;
    }

    private static void cocoons(String species, String place, List<Sized> sizes, List<Boolean> female)
            throws IOException {
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder()
                .fieldSeparator('\t')
                .ofNamedCsvRecord(SharedData.file("osmia/moellmann-2025/3_raw_data.tsv"))) {
            for (NamedCsvRecord row : reader) {
                String sex = row.getField("sex");
                if (row.getField("species").equals(species)
                        && row.getField("population").equals(place)
                        && (sex.equals("female") || sex.equals("male"))
                        && !row.getField("week0").equals("NA")) {
                    sizes.add(Sized.of(SharedData.number(row, "week0")));
                    female.add(sex.equals("female"));
                }
            }
        }
    }
}

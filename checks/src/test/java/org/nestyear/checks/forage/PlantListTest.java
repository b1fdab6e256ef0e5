package org.nestyear.checks.forage;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Comparison;
import org.nestyear.checks.Repository;
import org.nestyear.checks.SharedData;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.data.CatalogueFiles;

/** What the plant list says against the databases it names: USDA PLANTS and AgriLand (Baude, Kunin &amp; Memmott 2015). */
class PlantListTest {
    private static final Set<String> EAST = Set.of(
            "ME NH VT MA RI CT NY NJ PA DE MD DC VA WV NC SC GA FL AL MS TN KY OH IN IL MI WI MN IA MO AR LA ON QC NB NS PE"
                    .split(" "));
    private static final Set<String> WEST = Set.of("WA OR CA ID NV UT AZ MT WY CO NM BC".split(" "));

    private static List<NamedCsvRecord> list() {
        return csv(Repository.root().resolve("data/src/main/resources/catalogue/plants.csv"));
    }

    private static List<NamedCsvRecord> csv(Path file) {
        List<NamedCsvRecord> rows = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(file)) {
            reader.forEach(rows::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    private static Map<String, NamedCsvRecord> plantsDatabase() {
        Map<String, NamedCsvRecord> bySymbol = new HashMap<>();
        SharedData.rows("forage/usda_plants_bloom_native.csv")
                .forEach(row -> bySymbol.put(row.getField("symbol"), row));
        return bySymbol;
    }

    @Test
    void bloomWordsAreThoseOfThePlantsDatabase() {
        Map<String, NamedCsvRecord> plants = plantsDatabase();
        int equal = 0;
        int other = 0;
        for (NamedCsvRecord row : list()) {
            if (row.getField("america_symbol").isEmpty()) {
                continue;
            }
            NamedCsvRecord plant =
                    Objects.requireNonNull(plants.get(row.getField("america_symbol")), row.getField("name"));
            assertThat(plant.getField("binomial"))
                    .isEqualTo(row.getField("latin_name").replace("× ", "×"));
            String word = plant.getField("bloom_period").toLowerCase(Locale.ROOT);
            if (row.getField("bloom_source").equals("usda-plants")) {
                assertThat(row.getField("bloom")).as(row.getField("name")).isEqualTo(word);
                equal++;
            } else {
                // Another word is used from memory; then the list says what the database has.
                assertThat(row.getField("bloom_note"))
                        .as(row.getField("name"))
                        .isEqualTo("the PLANTS database says " + word);
                other++;
            }
        }
        System.out.println("bloom words: " + equal + " as in PLANTS, " + other + " otherwise and noted");
        assertThat(equal).isGreaterThan(35);
    }

    /** Native in more than half the states and provinces of the region, in some, brought in, or not there. */
    @Test
    void standingsInAmericaAreThoseOfThePlantsDatabase() {
        Map<String, NamedCsvRecord> plants = plantsDatabase();
        int checked = 0;
        for (NamedCsvRecord row : list()) {
            if (!row.getField("america_source").equals("usda-plants")) {
                continue;
            }
            NamedCsvRecord plant =
                    Objects.requireNonNull(plants.get(row.getField("america_symbol")), row.getField("name"));
            assertThat(plain(row.getField("east"))).as(row.getField("name")).isEqualTo(standing(plant, EAST));
            assertThat(plain(row.getField("west"))).as(row.getField("name")).isEqualTo(standing(plant, WEST));
            checked++;
        }
        assertThat(checked).isGreaterThan(45);
    }

    private static String plain(String standing) {
        return standing.equals("wild") ? "introduced" : standing;
    }

    private static String standing(NamedCsvRecord plant, Set<String> region) {
        Set<String> nativeIn = Set.of(plant.getField("native_in").split(" "));
        long in = region.stream().filter(nativeIn::contains).count();
        if (in > 0) {
            return in > region.size() / 2.0 ? "native" : "part";
        }
        Set<String> introduced = Set.of(plant.getField("introduced_in").split(" "));
        return region.stream().anyMatch(introduced::contains) ? "introduced" : "no";
    }

    /** Open flowers a square metre; for heads and catkins those over the open florets of one. */
    @Test
    void flowerCountsAreThoseOfAgriLand() throws IOException {
        Map<String, List<String>> counts = new HashMap<>();
        try (var reader =
                CsvReader.builder().ofCsvRecord(SharedData.file("forage/agriland_flowerdensity_perspecies.csv"))) {
            reader.forEach(row -> counts.put(row.getField(0), row.getFields()));
        }
        ParameterTable numbers = CatalogueFiles.flora().numbers();
        Comparison open = new Comparison("open flowers or heads a square metre", 0.006);
        for (NamedCsvRecord row : list()) {
            String kind = row.getField("counted_as");
            String id = "open_" + kind + "s_" + row.getField("id");
            if (!numbers.has(id) || !numbers.get(id).source().key().equals("agriland-2015")) {
                continue;
            }
            Parameter told = numbers.get(id);
            List<String> study = Objects.requireNonNull(
                    counts.get(told.locator().substring(0, told.locator().indexOf(':'))), id);
            double each = kind.equals("head") ? Double.parseDouble(study.get(2)) : 1;
            open.add(id, told.value(), Double.parseDouble(study.get(8)) / each);
        }
        open.check(30);
    }
}

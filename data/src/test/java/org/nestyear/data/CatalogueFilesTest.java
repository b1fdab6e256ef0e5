package org.nestyear.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.nestyear.core.forage.BloomWord;
import org.nestyear.core.forage.Flora;
import org.nestyear.core.forage.GardenPlant;
import org.nestyear.core.forage.RegionBloom;
import org.nestyear.core.forage.Standing;
import org.nestyear.core.place.Region;
import org.nestyear.core.source.Basis;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.species.Catalogue;
import org.nestyear.core.species.Species;

/** Every shipped number names its unit, range, basis and source. */
class CatalogueFilesTest {
    private static final Set<String> UNITS = Set.of(
            "1",
            "1/°C",
            "°C",
            "d",
            "1/d",
            "h",
            "mm",
            "m",
            "°",
            "mg",
            "%/d",
            "%/(°C·d)",
            "W/m²",
            "°C·d",
            "°C²·d",
            "1/(°C·h)",
            "°C^-0.5",
            "d at 4 °C",
            "day of year",
            "K",
            "1/h",
            "°F",
            "°F·h",
            "1/(°F·h)",
            "%",
            "ppm",
            "min",
            "months",
            "1/°C²",
            "m²",
            "1/ha",
            "1/m²",
            "d/°",
            "°C per 100 W/m²");
    private static final Set<String> PLACEHOLDERS = Set.of("tbd", "xxx", "some", "unknown", "?");

    private final Catalogue catalogue = CatalogueFiles.load();

    @Test
    void everySpeciesHasCompleteRows() {
        int rows = 0;
        assertThat(catalogue.species()).hasSize(4);
        for (Species species : catalogue.species()) {
            for (Parameter row : species.parameters().rows()) {
                rows++;
                assertThat(row.unit()).as(row.id()).isIn(UNITS);
                assertThat(row.locator()).as(row.id()).isNotBlank().isNotIn(PLACEHOLDERS);
                assertThat(row.source().citation()).as(row.id()).hasSizeGreaterThan(10);
            }
        }
        assertThat(rows).isGreaterThan(200);
    }

    @Test
    void leafcuttersHaveCompleteRows() {
        assertThat(CatalogueFiles.leafcutters().names()).containsExactly("Megachile rotundata");
        for (Species species : CatalogueFiles.leafcutters().species()) {
            assertThat(species.parameters().rows()).hasSizeGreaterThan(60);
            for (Parameter row : species.parameters().rows()) {
                assertThat(row.unit()).as(row.id()).isIn(UNITS);
                assertThat(row.locator()).as(row.id()).isNotBlank().isNotIn(PLACEHOLDERS);
                assertThat(row.source().citation()).as(row.id()).hasSizeGreaterThan(10);
                if (row.basis() == Basis.ASSUMED) {
                    assertThat(row.high()).as(row.id()).isGreaterThan(row.low());
                }
            }
        }
    }

    @Test
    void bloomTablesHaveCompleteRows() {
        assertThat(CatalogueFiles.bloomModels().rows()).hasSizeGreaterThan(30);
        assertThat(CatalogueFiles.springIndex().rows()).hasSize(12 + 3 * 7);
        for (ParameterTable table : List.of(CatalogueFiles.bloomModels(), CatalogueFiles.springIndex())) {
            for (Parameter row : table.rows()) {
                assertThat(row.unit()).as(row.id()).isIn(UNITS);
                assertThat(row.locator()).as(row.id()).isNotBlank().isNotIn(PLACEHOLDERS);
                if (row.basis() == Basis.ASSUMED) {
                    assertThat(row.high()).as(row.id()).isGreaterThan(row.low());
                }
            }
        }
    }

    @Test
    void tablesOfSmallSumsHaveCompleteRows() {
        for (String name :
                List.of("counting", "guests", "hygiene", "losses", "mud", "outlook", "reach", "sexing", "stocking")) {
            assertThat(CatalogueFiles.sums(name).rows()).as(name).isNotEmpty();
            for (Parameter row : CatalogueFiles.sums(name).rows()) {
                assertThat(row.unit()).as(row.id()).isIn(UNITS);
                assertThat(row.locator()).as(row.id()).isNotBlank().isNotIn(PLACEHOLDERS);
                assertThat(row.source().citation()).as(row.id()).hasSizeGreaterThan(10);
                if (row.basis() == Basis.ASSUMED && !row.locator().equals("practice rules")) {
                    assertThat(row.high()).as(row.id()).isGreaterThan(row.low());
                }
                if (row.isBorrowed()) {
                    assertThat(catalogue
                                    .find(row.borrowedFrom())
                                    .or(() -> CatalogueFiles.leafcutters().find(row.borrowedFrom())))
                            .as(row.id())
                            .isPresent();
                }
            }
        }
    }

    @Test
    void thePlantListHasCompleteRows() {
        Flora flora = CatalogueFiles.flora();
        assertThat(flora.plants()).hasSizeBetween(40, 120);
        assertThat(flora.plants().stream().map(GardenPlant::id)).doesNotHaveDuplicates();
        assertThat(flora.plants().stream().map(GardenPlant::latinName)).doesNotHaveDuplicates();
        for (Parameter row : flora.numbers().rows()) {
            assertThat(row.unit()).as(row.id()).isIn(UNITS);
            assertThat(row.locator()).as(row.id()).isNotBlank().isNotIn(PLACEHOLDERS);
            assertThat(row.low()).as(row.id()).isPositive();
        }
        for (GardenPlant plant : flora.plants()) {
            assertThat(flora.find(plant.latinName().toUpperCase(Locale.ROOT)))
                    .as(plant.name())
                    .contains(plant);
            assertThat(plant.mason() || plant.leafcutter() || plant.leaf())
                    .as(plant.name())
                    .isTrue();
        }
        assertThat(flora.regions()).hasSameSizeAs(Region.values());
        for (RegionBloom region : flora.regions()) {
            assertThat(region.words().keySet()).as(region.name()).containsExactlyInAnyOrder(BloomWord.values());
            assertThat(flora.plants().stream().filter(p -> p.in(region.region()) == Standing.NATIVE))
                    .as(region.name())
                    .hasSizeGreaterThan(15);
        }
    }

    @Test
    void assumedAndRememberedRowsShowARangeUnlessTheyAreDefinitions() {
        for (Species species : catalogue.species()) {
            for (Parameter row : species.parameters().rows()) {
                if (row.basis() == Basis.ASSUMED
                        && !row.locator().equals("definitions")
                        && !row.locator().equals("practice rules")) {
                    assertThat(row.high()).as(row.id()).isGreaterThan(row.low());
                }
            }
        }
    }

    @Test
    void borrowedRowsNameASpeciesOfTheCatalogue() {
        for (Species species : catalogue.species()) {
            for (Parameter row : species.parameters().rows()) {
                if (row.isBorrowed()) {
                    assertThat(catalogue.find(row.borrowedFrom())).as(row.id()).isPresent();
                }
            }
        }
    }

    /** A new table is on the page of sources from its first day. */
    @Test
    void everyTableOfTheFolderIsListed() throws IOException {
        List<String> others = List.of("sources", "species", "leafcutters");
        List<String> listed = new ArrayList<>();
        CatalogueFiles.all().forEach(table -> listed.add(table.name()));
        CatalogueFiles.wordTables().forEach(table -> listed.add(table.name()));
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/catalogue"))) {
            List<String> inFolder = files.map(
                            file -> file.getFileName().toString().replace(".csv", ""))
                    .filter(name -> !others.contains(name))
                    .toList();
            assertThat(listed).containsExactlyInAnyOrderElementsOf(inFolder);
            assertThat(inFolder)
                    .hasSizeGreaterThan(12)
                    .containsAll(CatalogueFiles.speciesTables().keySet());
        }
    }
}

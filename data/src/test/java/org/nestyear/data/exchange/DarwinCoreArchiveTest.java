package org.nestyear.data.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.nestyear.core.losses.Cause;
import org.nestyear.data.exchange.DarwinCoreArchive.Dataset;
import org.nestyear.data.exchange.NestOccurrence.Found;
import org.nestyear.data.exchange.NestOccurrence.NativeHere;
import org.nestyear.data.exchange.NestOccurrence.Stage;
import org.nestyear.data.exchange.NestOccurrence.Stock;

/**
 * The archive as a reader finds it that knows only the Text Guide: {@link ArchiveReader} goes by {@code meta.xml} (read with
 * the JDK's DOM parser) to the files (read with Apache Commons CSV); neither had a hand in writing. GBIF's own reader is
 * not in Maven's central repository, so it could not be used.
 */
class DarwinCoreArchiveTest {
    private static final Dataset DATASET = new Dataset(
            "urn:uuid:00000000-0000-4000-8000-00000000d5e7",
            "Nests of an invented orchard & two gardens",
            "Invented; <not> for use.",
            "R. Keeper",
            LocalDate.parse("2015-11-25"),
            Licence.CC_BY);

    @Test
    void anOpeningIsFoundAgainWithAllThatWasCounted() throws Exception {
        NestOccurrence opening = Samples.opening(1, Samples.tally());
        ArchiveReader archive = read(List.of(opening), Disclosure.all());
        assertThat(archive.core()).hasSize(1);
        Map<String, String> row = archive.core().get(0);
        Map<String, String> expected = new TreeMap<>();
        expected.put("occurrenceID", "urn:uuid:" + opening.id());
        expected.put("basisOfRecord", "HumanObservation");
        expected.put("occurrenceStatus", "present");
        expected.put("modified", "2015-03-10T12:00:00Z");
        expected.put("license", "http://creativecommons.org/licenses/by/4.0/legalcode");
        expected.put("datasetName", DATASET.title());
        expected.put("recordedBy", "R. Keeper, \"the younger\"");
        // Darwin Core term eventDate: ISO 8601-1:2019, a range with a solidus.
        expected.put("eventDate", "2015-10-03/2015-10-05");
        expected.put("year", "2015");
        expected.put("samplingProtocol", "trap nests; opened and brood cells counted");
        expected.put("scientificName", "Osmia lignaria");
        expected.put("taxonRank", "species");
        expected.put("vernacularName", "blue orchard bee");
        expected.put("kingdom", "Animalia");
        expected.put("phylum", "Arthropoda");
        expected.put("class", "Insecta");
        expected.put("order", "Hymenoptera");
        expected.put("family", "Megachilidae");
        expected.put("genus", "Osmia");
        expected.put("nomenclaturalCode", "ICZN");
        expected.put("individualCount", "25");
        expected.put("organismQuantity", "31");
        expected.put("organismQuantityType", "brood cells");
        expected.put("lifeStage", "adult");
        expected.put("vitality", "mixedLot");
        expected.put("establishmentMeans", "native");
        expected.put("degreeOfEstablishment", "cultivated");
        expected.put("occurrenceRemarks", "managed stock, or the young of it");
        expected.put("locationID", Samples.LANE.id());
        expected.put("locality", Samples.LANE.name() + ", house east, nest T1");
        expected.put("decimalLatitude", "40.781234");
        expected.put("decimalLongitude", "-73.967891");
        expected.put("geodeticDatum", "EPSG:4326");
        expected.put("coordinateUncertaintyInMeters", "25");
        expected.put("minimumElevationInMeters", "40");
        expected.put("maximumElevationInMeters", "40");
        assertThat(filled(row)).isEqualTo(expected);
    }

    @Test
    void everyMeasurementHasItsUnitItsMethodAndItsOccurrence() throws Exception {
        NestOccurrence one = Samples.opening(1, Samples.tally());
        NestOccurrence two = Samples.opening(2, Found.plugged(7));
        ArchiveReader archive = read(List.of(one, two), Disclosure.careful());
        Map<String, String> values = new TreeMap<>();
        Set<String> ids = new HashSet<>();
        for (Map<String, String> line : archive.extension()) {
            assertThat(line.get("measurementUnit")).isNotBlank();
            assertThat(line.get("measurementMethod")).isNotBlank();
            assertThat(ids.add(line.get("measurementID"))).isTrue();
            values.put(
                    last(line.get(ArchiveReader.CORE_ID)) + " " + line.get("measurementType"),
                    line.get("measurementValue") + " " + line.get("measurementUnit"));
        }
        assertThat(values)
                .containsOnly(
                        Map.entry("1 plugged nest tunnels", "4 tunnels"),
                        Map.entry("1 brood cells", "31 cells"),
                        Map.entry("1 living females", "9 individuals"),
                        Map.entry("1 living males", "14 individuals"),
                        Map.entry("1 living, sex not judged", "2 individuals"),
                        Map.entry("1 cells lost to chalkbrood", "1 cells"),
                        Map.entry("1 cells lost to parasitoid wasps", "4 cells"),
                        Map.entry("1 cells lost to pollen balls (food left, no grub)", "1 cells"),
                        Map.entry("1 inner width of the nest tunnels", "8 mm"),
                        Map.entry("2 plugged nest tunnels", "7 tunnels"),
                        Map.entry("2 inner width of the nest tunnels", "8 mm"));
    }

    @Test
    void everyTermAndEveryWordIsAPublishedOne() throws Exception {
        List<NestOccurrence> all = everyKind();
        for (Disclosure disclosure : List.of(Disclosure.all(), Disclosure.careful())) {
            ArchiveReader archive = read(all, disclosure);
            assertThat(archive.coreType()).isEqualTo("http://rs.tdwg.org/dwc/terms/Occurrence");
            assertThat(archive.extensionType()).isEqualTo("http://rs.tdwg.org/dwc/terms/MeasurementOrFact");
            assertThat(archive.coreTerms()).hasSizeGreaterThan(30).allSatisfy(DarwinCoreArchiveTest::checkTerm);
            assertThat(archive.extensionTerms())
                    .hasSize(5)
                    .allSatisfy(iri -> assertThat(PublishedTerms.MEASUREMENT).contains(after(iri, Terms.DWC)));
            int words = 0;
            for (Map<String, String> row : archive.core()) {
                for (Map.Entry<String, Set<String>> column : PublishedTerms.WORDS.entrySet()) {
                    String word = row.get(column.getKey());
                    assertThat(word).as(column.getKey()).isNotNull();
                    if (word != null && !word.isEmpty()) {
                        assertThat(column.getValue()).as(column.getKey()).contains(word);
                        words++;
                    }
                }
            }
            assertThat(words).isGreaterThan(5 * all.size());
        }
    }

    @Test
    void keptStockIsMarkedAndNotTakenForWild() throws Exception {
        for (NestOccurrence seen : everyKind()) {
            Map<String, String> row =
                    read(List.of(seen), Disclosure.careful()).core().get(0);
            String degree = row.get("degreeOfEstablishment");
            String remarks = row.get("occurrenceRemarks");
            switch (seen.stock()) {
                case MANAGED -> {
                    // TDWG Degree of Establishment d003: fit conditions, hardly any measure against dispersal. Not
                    // d002,
                    // captive, which is "only for cases where specific actions have been taken" against escape.
                    assertThat(degree).isEqualTo("cultivated");
                    assertThat(remarks).contains("managed stock");
                }
                case WILD -> assertThat(degree).isEqualTo(seen.nativeHere() == NativeHere.NATIVE ? "native" : "");
                case NOT_TOLD -> assertThat(degree).isEmpty();
            }
        }
    }

    @Test
    void nothingOfTheKeeperIsInACarefulArchive() throws Exception {
        byte[] bytes = bytes(everyKind(), Disclosure.careful());
        ArchiveReader archive = new ArchiveReader(bytes);
        for (String text : archive.texts().values()) {
            assertThat(text).doesNotContain("Tansy", "Keeper,", "R. Keeper", "east", "T1", "40.781", "73.9678");
        }
        assertThat(archive.core()).isNotEmpty();
        for (Map<String, String> row : archive.core()) {
            Coordinates at = new Coordinates(
                    Double.parseDouble(row.get("decimalLatitude")), Double.parseDouble(row.get("decimalLongitude")));
            double uncertainty = Double.parseDouble(row.get("coordinateUncertaintyInMeters"));
            assertThat(BlurTest.metres(at, Samples.LANE.at())).isBetween(1.0, uncertainty);
            assertThat(row.get("dataGeneralizations")).contains("10000 m");
            assertThat(row.get("informationWithheld")).contains("exact coordinates", "names", "recorder");
            assertThat(row.get("minimumElevationInMeters")).isEmpty();
            assertThat(row.get("locality")).isEmpty();
        }
    }

    @Test
    void deadBroodIsThereAndAnEmptyNestIsNot() throws Exception {
        Found dead = new Found(null, 5, 0, 0, null, Map.of(Cause.MOULD, 5));
        Map<String, String> row =
                read(List.of(Samples.opening(1, dead)), Disclosure.all()).core().get(0);
        assertThat(row.get("occurrenceStatus")).isEqualTo("present");
        assertThat(row.get("individualCount")).isEmpty();
        assertThat(row.get("vitality")).isEqualTo("dead");
        assertThat(row.get("organismQuantity")).isEqualTo("5");

        Map<String, String> empty = read(List.of(Samples.opening(1, Found.plugged(0))), Disclosure.all())
                .core()
                .get(0);
        assertThat(empty.get("occurrenceStatus")).isEqualTo("absent");
        assertThat(empty.get("individualCount")).isEqualTo("0");
        assertThat(empty.get("lifeStage")).isEmpty();
        assertThat(empty.get("vitality")).isEmpty();
    }

    @Test
    void allLivingIsAlive() throws Exception {
        Found living = new Found(null, 5, 3, 2, null, Map.of(Cause.MOULD, 0));
        Map<String, String> row = read(List.of(Samples.opening(1, living)), Disclosure.all())
                .core()
                .get(0);
        assertThat(row.get("vitality")).isEqualTo("alive");
        assertThat(PublishedTerms.WORDS.get("vitality")).contains("alive");
        assertThat(row.get("individualCount")).isEqualTo("5");
    }

    @Test
    void oneSexIsSaidOnlyWhereAllWereJudged() throws Exception {
        Found females = new Found(null, null, 3, 0, null, Map.of());
        Found unsure = new Found(null, null, 3, 0, 1, Map.of());
        Found both = new Found(null, null, 3, 1, null, Map.of());
        List<String> sexes = new ArrayList<>();
        for (Found found : List.of(females, unsure, both)) {
            sexes.add(read(List.of(Samples.opening(1, found)), Disclosure.all())
                    .core()
                    .get(0)
                    .get("sex"));
        }
        assertThat(sexes).containsExactly("female", "", "");
    }

    @Test
    void theSameOccurrencesGiveTheSameBytesInWhateverOrder() throws Exception {
        List<NestOccurrence> all = new ArrayList<>(everyKind());
        byte[] first = bytes(all, Disclosure.careful());
        java.util.Collections.reverse(all);
        assertThat(bytes(all, Disclosure.careful())).isEqualTo(first);
    }

    @Test
    void namesWithLineEndsQuotesAndSignsComeBackOnOneLine() throws Exception {
        NestOccurrence like = Samples.opening(1, Samples.tally());
        PlacedSite site = new PlacedSite(
                "s\u2028t", "Iğdır \"蜜蜂園\", 🐝\r\n\u0085old\twall", like.site().at(), null, null, null);
        NestOccurrence odd = new NestOccurrence(
                like.id(),
                site,
                "a\nb",
                null,
                like.taxon(),
                like.from(),
                like.to(),
                like.stock(),
                like.nativeHere(),
                null,
                like.found(),
                null,
                "O'Neil; \"Bee\", =1+1",
                null);
        ArchiveReader archive = read(List.of(odd), Disclosure.all());
        Map<String, String> row = archive.core().get(0);
        assertThat(row.get("locality")).isEqualTo("Iğdır \"蜜蜂園\", 🐝 old wall, house a b");
        assertThat(row.get("locationID")).isEqualTo("s t");
        assertThat(row.get("recordedBy")).isEqualTo("O'Neil; \"Bee\", =1+1");
        // Term coordinateUncertaintyInMeters: empty where it is not known; zero is not a valid value.
        assertThat(row.get("coordinateUncertaintyInMeters")).isEmpty();
    }

    @Test
    void anArchiveOfNothingStillHasItsFiles() throws Exception {
        ArchiveReader archive = read(List.of(), Disclosure.careful());
        assertThat(archive.core()).isEmpty();
        assertThat(archive.extension()).isEmpty();
        assertThat(archive.texts()).containsOnlyKeys("meta.xml", "eml.xml", "occurrence.txt", "measurementorfact.txt");
    }

    @Test
    void impossibleCountsAreRefused() {
        assertThatThrownBy(() -> new Found(null, 5, 3, 2, 1, Map.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("6 living and 0 lost are more than the 5 cells");
        assertThatThrownBy(() -> new Found(null, null, null, null, null, Map.of()))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Found.plugged(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> NestTaxon.bee("osmia", null)).isInstanceOf(IllegalArgumentException.class);
        NestOccurrence one = Samples.opening(1, Found.plugged(1));
        assertThatThrownBy(() -> bytes(List.of(one, one), Disclosure.careful()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("twice");
    }

    /** One occurrence of every mixture of stock, range and stage. */
    private static List<NestOccurrence> everyKind() {
        List<NestOccurrence> all = new ArrayList<>();
        NestOccurrence like = Samples.opening(1, Samples.tally());
        for (Stock stock : Stock.values()) {
            for (NativeHere nativeHere : NativeHere.values()) {
                for (Stage stage : Stage.values()) {
                    all.add(new NestOccurrence(
                            Samples.opening(all.size() + 1, like.found()).id(),
                            like.site(),
                            like.house(),
                            like.nest(),
                            NestTaxon.bee(stage == Stage.PREPUPA ? "Megachile rotundata" : "Osmia lignaria", null),
                            like.from(),
                            like.from(),
                            stock,
                            nativeHere,
                            stage,
                            like.found(),
                            null,
                            like.recordedBy(),
                            null));
                }
            }
        }
        return all;
    }

    private static void checkTerm(String iri) {
        if (iri.startsWith(Terms.DCTERMS)) {
            assertThat(PublishedTerms.DCTERMS).contains(after(iri, Terms.DCTERMS));
        } else {
            assertThat(PublishedTerms.DWC).contains(after(iri, Terms.DWC));
        }
    }

    private static String last(@Nullable String id) {
        return id == null ? "none" : id.substring(id.length() - 1);
    }

    private static String after(String iri, String space) {
        assertThat(iri).startsWith(space);
        return iri.substring(space.length());
    }

    private static Map<String, String> filled(Map<String, String> row) {
        Map<String, String> filled = new TreeMap<>();
        row.forEach((term, cell) -> {
            if (!cell.isEmpty()) {
                filled.put(term, cell);
            }
        });
        return filled;
    }

    private static ArchiveReader read(List<NestOccurrence> occurrences, Disclosure disclosure) throws Exception {
        return new ArchiveReader(bytes(occurrences, disclosure));
    }

    private static byte[] bytes(List<NestOccurrence> occurrences, Disclosure disclosure) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DarwinCoreArchive.write(occurrences, DATASET, disclosure, bytes);
        return bytes.toByteArray();
    }
}

package org.nestyear.data.exchange;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.nestyear.data.exchange.Blur.Blurred;
import org.nestyear.data.exchange.NestOccurrence.Found;

/**
 * A column of {@code occurrence.txt}: a term of the Darwin Core list of 2025-07-10 and how its cells are filled.
 *
 * @param space name space of the term
 * @param term its local name, which heads the column
 * @param value what stands in a cell; null where nothing is known or may be told
 */
record OccurrenceColumn(String space, String term, Function<Row, @Nullable String> value) {
    /** All of them, in order; the first is the id that measurements refer to. */
    static final List<OccurrenceColumn> ALL = List.of(
            of("occurrenceID", row -> row.id()),
            of("basisOfRecord", row -> "HumanObservation"),
            of("occurrenceStatus", row -> row.found().isPresent() ? "present" : "absent"),
            of(Terms.DCTERMS, "modified", OccurrenceColumn::modified),
            of(Terms.DCTERMS, "license", row -> row.licence().uri()),
            of("datasetName", Row::datasetName),
            of("informationWithheld", OccurrenceColumn::withheld),
            of("dataGeneralizations", OccurrenceColumn::generalizations),
            of("recordedBy", row -> row.disclosure().people() ? row.occurrence().recordedBy() : null),
            of("eventDate", OccurrenceColumn::eventDate),
            of("year", row -> Integer.toString(row.occurrence().from().getYear())),
            of(
                    "samplingProtocol",
                    row -> row.found().cells() == null
                                    && row.found().live() == null
                                    && row.found().losses().isEmpty()
                            ? "trap nests; plugged tunnels counted from outside"
                            : "trap nests; opened and brood cells counted"),
            of("scientificName", row -> row.occurrence().taxon().scientificName()),
            of("taxonRank", row -> row.occurrence().taxon().rank()),
            of("vernacularName", row -> row.occurrence().taxon().vernacularName()),
            of("kingdom", row -> "Animalia"),
            of("phylum", row -> "Arthropoda"),
            of("class", row -> "Insecta"),
            of("order", row -> "Hymenoptera"),
            of("family", row -> row.occurrence().taxon().family()),
            of("genus", row -> row.occurrence().taxon().genus()),
            of("nomenclaturalCode", row -> "ICZN"),
            of("individualCount", OccurrenceColumn::individuals),
            of("organismQuantity", row -> quantity(row.found(), false)),
            of("organismQuantityType", row -> quantity(row.found(), true)),
            of("sex", OccurrenceColumn::sex),
            of("lifeStage", OccurrenceColumn::lifeStage),
            of("vitality", row -> vitality(row.found())),
            of("establishmentMeans", OccurrenceColumn::establishmentMeans),
            of("degreeOfEstablishment", OccurrenceColumn::degreeOfEstablishment),
            of("occurrenceRemarks", OccurrenceColumn::remarks),
            of("locationID", row -> row.occurrence().site().id()),
            of("locality", OccurrenceColumn::locality),
            of("decimalLatitude", row -> Numbers.plain(row.place().at().latitudeDeg(), Terms.PLACES_DEG)),
            of("decimalLongitude", row -> Numbers.plain(row.place().at().longitudeDeg(), Terms.PLACES_DEG)),
            of("geodeticDatum", row -> "EPSG:4326"),
            of("coordinateUncertaintyInMeters", OccurrenceColumn::uncertainty),
            of("minimumElevationInMeters", OccurrenceColumn::elevation),
            of("maximumElevationInMeters", OccurrenceColumn::elevation));

    private static OccurrenceColumn of(String term, Function<Row, @Nullable String> value) {
        return of(Terms.DWC, term, value);
    }

    private static OccurrenceColumn of(String space, String term, Function<Row, @Nullable String> value) {
        return new OccurrenceColumn(space, term, value);
    }

    /** The term's IRI. */
    String iri() {
        return space + term;
    }

    String cell(Row row) {
        String cell = value.apply(row);
        return cell == null ? "" : cell;
    }

    private static @Nullable String modified(Row row) {
        return row.occurrence().modified() == null
                ? null
                : row.occurrence().modified().truncatedTo(ChronoUnit.SECONDS).toString();
    }

    private static @Nullable String withheld(Row row) {
        List<String> withheld = new ArrayList<>();
        if (row.disclosure().blur().isBlurred()) {
            withheld.add("exact coordinates and elevation withheld by the keeper");
        }
        if (!row.disclosure().names()) {
            withheld.add("names of the site and its nests withheld by the keeper");
        }
        if (!row.disclosure().people() && row.occurrence().recordedBy() != null) {
            withheld.add("name of the recorder withheld by the keeper");
        }
        return withheld.isEmpty() ? null : String.join(" | ", withheld);
    }

    private static @Nullable String generalizations(Row row) {
        return row.disclosure().blur().isBlurred()
                ? "Coordinates are the centre of a grid cell about "
                        + row.disclosure().blur().gridM() + " m wide"
                : null;
    }

    /** ISO 8601: a day, or two with a slash between them. */
    private static String eventDate(Row row) {
        NestOccurrence seen = row.occurrence();
        return seen.from().equals(seen.to()) ? seen.from().toString() : seen.from() + "/" + seen.to();
    }

    /** None where all were dead: a count of 0 would contradict that the kind was there. */
    private static @Nullable String individuals(Row row) {
        Integer live = row.found().live();
        if (live == null) {
            return row.found().isPresent() ? null : "0";
        }
        return live == 0 && row.found().isPresent() ? null : live.toString();
    }

    /** Cells where they were counted, else plugged tunnels; amount or what it is an amount of. */
    private static @Nullable String quantity(Found found, boolean type) {
        if (found.cells() != null) {
            return type ? "brood cells" : found.cells().toString();
        }
        if (found.pluggedTunnels() != null) {
            return type ? "plugged nest tunnels" : found.pluggedTunnels().toString();
        }
        return null;
    }

    /** One sex only where all the living were judged and are of it. */
    private static @Nullable String sex(Row row) {
        Found found = row.found();
        int females = found.females() == null ? 0 : found.females();
        int males = found.males() == null ? 0 : found.males();
        if ((found.unsexed() != null && found.unsexed() > 0) || (females > 0 && males > 0)) {
            return null;
        }
        return females > 0 ? "female" : males > 0 ? "male" : null;
    }

    private static @Nullable String lifeStage(Row row) {
        NestOccurrence.Stage stage = row.occurrence().stage();
        if (stage == null || !row.found().isPresent()) {
            return null;
        }
        return switch (stage) {
            case LARVA, PREPUPA -> "larva";
            case PUPA -> "pupa";
            case ADULT -> "adult";
        };
    }

    private static @Nullable String vitality(Found found) {
        Integer live = found.live();
        if (live == null || !found.isPresent()) {
            return null;
        }
        boolean lost = found.lost() > 0 || (found.cells() != null && found.cells() > live);
        return live == 0 ? "dead" : lost ? "mixedLot" : "alive";
    }

    private static @Nullable String establishmentMeans(Row row) {
        return switch (row.occurrence().nativeHere()) {
            case NATIVE -> "native";
            case INTRODUCED -> "introduced";
            case NOT_TOLD -> null;
        };
    }

    /**
     * Kept bees fly where they like: "captive" is only for those held in, "cultivated" for those given fit conditions
     * without a fence (TDWG Degree of Establishment vocabulary, 2025-07-10, d002 and d003).
     */
    private static @Nullable String degreeOfEstablishment(Row row) {
        return switch (row.occurrence().stock()) {
            case MANAGED -> "cultivated";
            case WILD -> row.occurrence().nativeHere() == NestOccurrence.NativeHere.NATIVE ? "native" : null;
            case NOT_TOLD -> null;
        };
    }

    private static @Nullable String remarks(Row row) {
        List<String> remarks = new ArrayList<>();
        switch (row.occurrence().stock()) {
            case MANAGED -> remarks.add("managed stock, or the young of it");
            case WILD -> remarks.add("came by itself to a nest put up for bees");
            case NOT_TOLD -> remarks.add("not told whether managed or wild");
        }
        if (row.occurrence().stage() == NestOccurrence.Stage.PREPUPA
                && row.found().isPresent()) {
            remarks.add("prepupae");
        }
        return String.join("; ", remarks);
    }

    private static @Nullable String locality(Row row) {
        if (!row.disclosure().names()) {
            return null;
        }
        NestOccurrence seen = row.occurrence();
        List<String> parts = new ArrayList<>(List.of(seen.site().name()));
        if (seen.house() != null) {
            parts.add("house " + seen.house());
        }
        if (seen.nest() != null) {
            parts.add("nest " + seen.nest());
        }
        return String.join(", ", parts);
    }

    /** Never 0, which the term does not allow; empty when not known. */
    private static @Nullable String uncertainty(Row row) {
        Double told = row.occurrence().site().withinM();
        double withinM = row.place().withinM() + (told == null ? 0 : told);
        return withinM > 0 ? Numbers.plain(Math.ceil(withinM), 0) : null;
    }

    private static @Nullable String elevation(Row row) {
        Double elevation = row.occurrence().site().elevationM();
        return elevation == null || row.disclosure().blur().isBlurred() ? null : Numbers.plain(elevation, 1);
    }

    /**
     * An occurrence with what its columns are filled from.
     *
     * @param place the site as it may be given away
     */
    record Row(NestOccurrence occurrence, Blurred place, Disclosure disclosure, Licence licence, String datasetName) {
        Found found() {
            return occurrence.found();
        }

        String id() {
            return "urn:uuid:" + occurrence.id();
        }
    }
}

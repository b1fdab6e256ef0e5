package org.nestyear.data.exchange;

import java.util.Map;
import java.util.Set;

/**
 * Terms and words as published, for the tests to hold our files against.
 *
 * <p>Terms: Darwin Core occurrence core and measurement extension, the column lists TDWG distributes with the standard
 * (dist/dwc_occurrence_core_horizontal.csv and the Measurement or Fact extension of 2025-07-10).
 */
final class PublishedTerms {
    /** Of the occurrence core, in the {@code dwc:} name space; the ones this program could have use for. */
    static final Set<String> DWC = Set.of(
            "basisOfRecord",
            "informationWithheld",
            "dataGeneralizations",
            "dynamicProperties",
            "datasetID",
            "datasetName",
            "occurrenceID",
            "recordedBy",
            "individualCount",
            "organismQuantity",
            "organismQuantityType",
            "sex",
            "lifeStage",
            "vitality",
            "establishmentMeans",
            "degreeOfEstablishment",
            "pathway",
            "occurrenceStatus",
            "occurrenceRemarks",
            "eventID",
            "eventDate",
            "year",
            "samplingProtocol",
            "locationID",
            "countryCode",
            "locality",
            "minimumElevationInMeters",
            "maximumElevationInMeters",
            "decimalLatitude",
            "decimalLongitude",
            "geodeticDatum",
            "coordinateUncertaintyInMeters",
            "coordinatePrecision",
            "scientificName",
            "kingdom",
            "phylum",
            "class",
            "order",
            "family",
            "genus",
            "taxonRank",
            "vernacularName",
            "nomenclaturalCode");

    /** Of the same list, in the {@code dcterms:} name space. */
    static final Set<String> DCTERMS = Set.of("modified", "license", "language", "rightsHolder", "accessRights");

    /** Of the Measurement or Fact extension. */
    static final Set<String> MEASUREMENT = Set.of(
            "measurementID",
            "parentMeasurementID",
            "measurementType",
            "verbatimMeasurementType",
            "measurementValue",
            "measurementAccuracy",
            "measurementUnit",
            "measurementDeterminedBy",
            "measurementDeterminedDate",
            "measurementMethod",
            "measurementRemarks");

    /** Words a column may hold; no cell of another word passes. */
    static final Map<String, Set<String>> WORDS = Map.of(
            // Comment of the term list: local names of classes; the one this program has use for.
            "basisOfRecord", Set.of("HumanObservation"),
            // Term list, comment to occurrenceStatus.
            "occurrenceStatus", Set.of("present", "absent"),
            // TDWG Establishment Means vocabulary, 2025-07-10, controlled values e001 to e007.
            "establishmentMeans",
                    Set.of(
                            "native",
                            "nativeReintroduced",
                            "nativeEndemic",
                            "introduced",
                            "introducedAssistedColonisation",
                            "vagrant",
                            "uncertain"),
            // TDWG Degree of Establishment vocabulary, 2025-07-10, controlled values d001 to d011.
            "degreeOfEstablishment",
                    Set.of(
                            "native",
                            "captive",
                            "cultivated",
                            "released",
                            "failing",
                            "casual",
                            "reproducing",
                            "established",
                            "colonising",
                            "invasive",
                            "widespreadInvasive"),
            // GBIF Life Stage vocabulary, preferred terms, those of animals.
            "lifeStage", Set.of("zygote", "embryo", "larva", "juvenile", "adult", "pupa"),
            // Examples of the term list.
            "sex", Set.of("female", "male", "hermaphrodite"),
            // Examples of the term list.
            "vitality", Set.of("alive", "dead", "mixedLot", "uncertain", "notAssessed"),
            // Examples of the term list, those of animals.
            "taxonRank", Set.of("genus", "species", "subspecies"),
            // Examples of the term list.
            "nomenclaturalCode", Set.of("ICN", "ICZN"),
            "geodeticDatum", Set.of("EPSG:4326", "WGS84"));

    private PublishedTerms() {}
}

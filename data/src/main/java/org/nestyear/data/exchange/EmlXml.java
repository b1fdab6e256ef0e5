package org.nestyear.data.exchange;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.nestyear.data.exchange.DarwinCoreArchive.Dataset;
import org.nestyear.data.exchange.OccurrenceColumn.Row;

/**
 * {@code eml.xml}: what the archive says of itself, in the least that Ecological Metadata Language 2.1.1 asks for, with
 * the years and kinds it covers.
 */
final class EmlXml {
    private EmlXml() {}

    static String write(List<Row> rows, Dataset dataset, Disclosure disclosure) {
        XmlText xml = new XmlText();
        xml.open(
                "eml:eml",
                Map.of(
                        "xmlns:eml", "eml://ecoinformatics.org/eml-2.1.1",
                        "packageId", dataset.id(),
                        "system", "Nestyear",
                        "scope", "system",
                        "xml:lang", "en"));
        xml.open("dataset");
        xml.leaf("title", dataset.title());
        party(xml, "creator", dataset, disclosure);
        party(xml, "metadataProvider", dataset, disclosure);
        xml.leaf("pubDate", dataset.published().toString());
        xml.leaf("language", "en");
        xml.open("abstract").leaf("para", dataset.description()).close();
        xml.open("intellectualRights")
                .leaf(
                        "para",
                        dataset.licence().label() + ": " + dataset.licence().uri())
                .close();
        if (!rows.isEmpty()) {
            coverage(xml, rows);
        }
        party(xml, "contact", dataset, disclosure);
        xml.close();
        return xml.close().end();
    }

    private static void party(XmlText xml, String role, Dataset dataset, Disclosure disclosure) {
        xml.open(role);
        if (disclosure.people() && dataset.publisher() != null) {
            xml.open("individualName").leaf("surName", dataset.publisher()).close();
        } else {
            xml.leaf("positionName", "Keeper of bees, name withheld");
        }
        xml.close();
    }

    private static void coverage(XmlText xml, List<Row> rows) {
        LocalDate first = rows.stream()
                .map(row -> row.occurrence().from())
                .min(Comparator.naturalOrder())
                .orElseThrow();
        LocalDate last = rows.stream()
                .map(row -> row.occurrence().to())
                .max(Comparator.naturalOrder())
                .orElseThrow();
        xml.open("coverage").open("temporalCoverage").open("rangeOfDates");
        xml.open("beginDate").leaf("calendarDate", first.toString()).close();
        xml.open("endDate").leaf("calendarDate", last.toString()).close();
        xml.close().close().open("taxonomicCoverage");
        TreeSet<String> names = new TreeSet<>();
        rows.forEach(row -> names.add(row.occurrence().taxon().scientificName()));
        for (String name : names) {
            xml.open("taxonomicClassification")
                    .leaf("taxonRankName", new NestTaxon(name, null, null).rank())
                    .leaf("taxonRankValue", name)
                    .close();
        }
        xml.close().close();
    }
}

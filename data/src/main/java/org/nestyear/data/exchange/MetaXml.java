package org.nestyear.data.exchange;

import java.util.List;
import java.util.Map;

/** {@code meta.xml}: which file holds what, and the term of every column (Darwin Core Text Guide §2). */
final class MetaXml {
    private MetaXml() {}

    static String write() {
        XmlText xml = new XmlText();
        xml.open("archive", Map.of("xmlns", "http://rs.tdwg.org/dwc/text/", "metadata", DarwinCoreArchive.METADATA));
        table(xml, "core", "Occurrence", DarwinCoreArchive.OCCURRENCES);
        xml.empty("id", Map.of("index", "0"));
        for (int i = 0; i < OccurrenceColumn.ALL.size(); i++) {
            field(xml, i, OccurrenceColumn.ALL.get(i).iri());
        }
        xml.close();
        table(xml, "extension", "MeasurementOrFact", DarwinCoreArchive.MEASUREMENTS);
        // The guide's text says coreId; its schema and its examples say coreid, which readers go by.
        xml.empty("coreid", Map.of("index", "0"));
        List<String> terms = Measurement.TERMS;
        for (int i = 0; i < terms.size(); i++) {
            field(xml, i + 1, Terms.DWC + terms.get(i));
        }
        xml.close();
        return xml.close().end();
    }

    private static void table(XmlText xml, String element, String rowType, String file) {
        xml.open(
                element,
                Map.of(
                        "encoding", "UTF-8",
                        "fieldsTerminatedBy", ",",
                        "linesTerminatedBy", "\\n",
                        "fieldsEnclosedBy", "\"",
                        "ignoreHeaderLines", "1",
                        "rowType", Terms.DWC + rowType));
        xml.open("files").leaf("location", file).close();
    }

    private static void field(XmlText xml, int index, String iri) {
        xml.empty("field", Map.of("index", Integer.toString(index), "term", iri));
    }
}

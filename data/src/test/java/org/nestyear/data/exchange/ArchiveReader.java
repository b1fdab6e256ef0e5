package org.nestyear.data.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/**
 * Reads a Darwin Core Archive by the Darwin Core Text Guide (TDWG, http://rs.tdwg.org/dwc/terms/guides/text/) alone, and
 * fails where the archive breaks one of its rules.
 */
final class ArchiveReader {
    /** Key of the column that refers to the core. */
    static final String CORE_ID = "coreid";

    private static final String TEXT = "http://rs.tdwg.org/dwc/text/";

    private final Map<String, String> texts = new LinkedHashMap<>();
    private final Table core;
    private final Table extension;

    ArchiveReader(byte[] zip) throws Exception {
        unzip(zip);
        Element archive = xml("meta.xml").getDocumentElement();
        // Schema of the guide, tdwg_dwc_text.xsd: one core, then any number of extensions; metadata is a file.
        assertThat(archive.getNamespaceURI()).isEqualTo(TEXT);
        assertThat(archive.getLocalName()).isEqualTo("archive");
        assertThat(texts).containsKey(archive.getAttribute("metadata"));
        List<Element> tables = children(archive);
        assertThat(tables).extracting(Element::getLocalName).containsExactly("core", "extension");
        core = table(tables.get(0), "id");
        extension = table(tables.get(1), CORE_ID);
        // §2.1: each record of the core has a unique id, and each record of an extension refers to one.
        Set<String> ids = new HashSet<>();
        core.rows().forEach(row -> assertThat(ids.add(row.get("id"))).isTrue());
        extension.rows().forEach(row -> assertThat(ids).contains(row.get(CORE_ID)));
        eml();
    }

    Map<String, String> texts() {
        return texts;
    }

    /** Cells by local name of the term, the id left out. */
    List<Map<String, String>> core() {
        core.rows().forEach(row -> row.remove("id"));
        return core.rows();
    }

    List<Map<String, String>> extension() {
        return extension.rows();
    }

    String coreType() {
        return core.type();
    }

    String extensionType() {
        return extension.type();
    }

    List<String> coreTerms() {
        return core.terms();
    }

    List<String> extensionTerms() {
        return extension.terms();
    }

    private void unzip(byte[] zip) throws IOException {
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                texts.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
    }

    private Document xml(String name) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        String text = text(name);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    private String text(String name) {
        return Objects.requireNonNull(texts.get(name), name);
    }

    private Table table(Element table, String idName) throws IOException {
        List<Element> parts = children(table);
        // Schema: files, then the id, then fields.
        assertThat(parts.get(0).getLocalName()).isEqualTo("files");
        assertThat(parts.get(1).getLocalName()).isEqualTo(idName);
        int idIndex = Integer.parseInt(parts.get(1).getAttribute("index"));
        Map<Integer, String> terms = new LinkedHashMap<>();
        for (Element field : parts.subList(2, parts.size())) {
            assertThat(field.getLocalName()).isEqualTo("field");
            assertThat(terms.put(Integer.parseInt(field.getAttribute("index")), field.getAttribute("term")))
                    .isNull();
        }
        assertThat(new HashSet<>(terms.values())).hasSameSizeAs(terms.keySet());
        String location = children(parts.get(0)).get(0).getTextContent();
        return new Table(
                table.getAttribute("rowType"),
                List.copyOf(terms.values()),
                rows(table, location, idName, idIndex, terms));
    }

    private List<Map<String, String>> rows(
            Element table, String location, String idName, int idIndex, Map<Integer, String> terms) throws IOException {
        assertThat(table.getAttribute("encoding")).isEqualTo("UTF-8");
        assertThat(table.getAttribute("linesTerminatedBy")).isEqualTo("\\n");
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(table.getAttribute("fieldsTerminatedBy"))
                .setQuote(table.getAttribute("fieldsEnclosedBy").charAt(0))
                .get();
        String text = text(location);
        int ignored = Integer.parseInt(table.getAttribute("ignoreHeaderLines"));
        List<Map<String, String>> rows = new ArrayList<>();
        try (CSVParser csv = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord record : csv) {
                if (record.getRecordNumber() > ignored) {
                    Map<String, String> row = new LinkedHashMap<>();
                    row.put(idName, record.get(idIndex));
                    terms.forEach(
                            (index, term) -> row.put(term.substring(term.lastIndexOf('/') + 1), record.get(index)));
                    rows.add(row);
                }
            }
            // A record is a line, so that readers that split at line ends find as many.
            assertThat(text.lines().count()).isEqualTo(rows.size() + (long) ignored);
        }
        return rows;
    }

    /**
     * Ecological Metadata Language 2.1.1: the root's name space and packageId and system; a dataset with title, creator and
     * contact, in the order of eml-resource.xsd and eml-dataset.xsd.
     */
    private void eml() throws Exception {
        Element eml = xml("eml.xml").getDocumentElement();
        assertThat(eml.getNamespaceURI()).isEqualTo("eml://ecoinformatics.org/eml-2.1.1");
        assertThat(eml.getLocalName()).isEqualTo("eml");
        assertThat(eml.getAttribute("packageId")).isNotEmpty();
        assertThat(eml.getAttribute("system")).isNotEmpty();
        List<String> parts = new ArrayList<>();
        for (Element part : children(children(eml).get(0))) {
            assertThat(part.getNamespaceURI()).isNull();
            parts.add(part.getLocalName());
        }
        List<String> order = new ArrayList<>(List.of(
                "title",
                "creator",
                "metadataProvider",
                "pubDate",
                "language",
                "abstract",
                "intellectualRights",
                "coverage",
                "contact"));
        if (core.rows().isEmpty()) {
            order.remove("coverage");
        }
        assertThat(parts).isEqualTo(order);
    }

    private static List<Element> children(Element parent) {
        List<Element> children = new ArrayList<>();
        NodeList nodes = parent.getChildNodes();
        for (int i = 0; i < nodes.getLength(); i++) {
            if (nodes.item(i).getNodeType() == Node.ELEMENT_NODE) {
                children.add((Element) nodes.item(i));
            }
        }
        return children;
    }

    private record Table(String type, List<String> terms, List<Map<String, String>> rows) {}
}

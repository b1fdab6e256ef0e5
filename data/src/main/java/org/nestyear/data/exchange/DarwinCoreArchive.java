package org.nestyear.data.exchange;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import org.nestyear.data.exchange.OccurrenceColumn.Row;

/**
 * Bees in nests as a Darwin Core Archive (TDWG standard 450, Text Guide): a zip of {@code meta.xml}, {@code eml.xml},
 * {@code occurrence.txt} and {@code measurementorfact.txt}, all UTF-8; media type {@code application/zip}. The same
 * occurrences give the same bytes.
 */
public final class DarwinCoreArchive {
    /** For the answer's header. */
    public static final String MEDIA_TYPE = "application/zip";

    static final String OCCURRENCES = "occurrence.txt";
    static final String MEASUREMENTS = "measurementorfact.txt";
    static final String METADATA = "eml.xml";
    /** The earliest moment a zip can hold; the day of writing would make equal archives differ. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private DarwinCoreArchive() {}

    /**
     * Writes the archive; the stream stays open.
     *
     * @param occurrences in any order, each id once
     * @param dataset what the archive says of itself
     * @param disclosure what may be given away
     * @throws IllegalArgumentException if an id comes twice
     * @throws IOException if the stream fails
     */
    public static void write(List<NestOccurrence> occurrences, Dataset dataset, Disclosure disclosure, OutputStream to)
            throws IOException {
        List<Row> rows = rows(occurrences, dataset, disclosure);
        ZipOutputStream zip = new ZipOutputStream(to, StandardCharsets.UTF_8);
        entry(zip, "meta.xml", MetaXml.write());
        entry(zip, METADATA, EmlXml.write(rows, dataset, disclosure));
        entry(zip, OCCURRENCES, occurrenceText(rows));
        entry(zip, MEASUREMENTS, measurementText(rows));
        zip.finish();
    }

    private static List<Row> rows(List<NestOccurrence> occurrences, Dataset dataset, Disclosure disclosure) {
        Set<Object> seen = new HashSet<>();
        List<Row> rows = new ArrayList<>();
        occurrences.stream()
                .sorted(Comparator.comparing(NestOccurrence::from)
                        .thenComparing(occurrence -> occurrence.id().toString()))
                .forEach(occurrence -> {
                    if (!seen.add(occurrence.id())) {
                        throw new IllegalArgumentException("occurrence " + occurrence.id() + " comes twice");
                    }
                    rows.add(new Row(
                            occurrence,
                            disclosure.blur().apply(occurrence.site().at()),
                            disclosure,
                            dataset.licence(),
                            dataset.title()));
                });
        return rows;
    }

    private static String occurrenceText(List<Row> rows) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(OccurrenceColumn.ALL.stream().map(OccurrenceColumn::term).toList());
        for (Row row : rows) {
            lines.add(OccurrenceColumn.ALL.stream()
                    .map(column -> column.cell(row))
                    .toList());
        }
        return csv(lines);
    }

    private static String measurementText(List<Row> rows) {
        List<List<String>> lines = new ArrayList<>();
        List<String> header = new ArrayList<>(List.of("occurrenceID"));
        header.addAll(Measurement.TERMS);
        lines.add(header);
        for (Row row : rows) {
            for (Measurement measured : Measurement.of(row.occurrence())) {
                String id = NamedUuid.of(row.id() + "\n" + measured.type()).toString();
                lines.add(List.of(
                        row.id(),
                        "urn:uuid:" + id,
                        measured.type(),
                        measured.value(),
                        measured.unit(),
                        measured.method()));
            }
        }
        return csv(lines);
    }

    private static String csv(List<List<String>> lines) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            for (List<String> line : lines) {
                csv.writeRecord(line.stream().map(DarwinCoreArchive::oneLine).toList());
            }
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory cannot fail", e);
        }
        return text.toString();
    }

    /** Many readers of archives take a line for a record, quotes or not. */
    private static String oneLine(String cell) {
        return cell.replaceAll("\\s+", " ").strip();
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    /**
     * What the archive says of itself.
     *
     * @param id stable, of the account's choosing
     * @param title in a few words
     * @param description a paragraph
     * @param publisher who gives it away, written only where {@link Disclosure#people()}; or null
     * @param published day of writing
     * @param licence on what terms
     */
    public record Dataset(
            String id,
            String title,
            String description,
            @Nullable String publisher,
            LocalDate published,
            Licence licence) {}
}

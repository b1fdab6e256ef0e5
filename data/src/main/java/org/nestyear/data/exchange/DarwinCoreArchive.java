package org.nestyear.data.exchange;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
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

    /** White space, control characters and the line ends of Unicode. */
    private static final Pattern LINE_BREAKS = Pattern.compile("[\\s\\p{Cntrl}\\x{85}\\x{2028}\\x{2029}]+");

    private static final char FIRST_UNUSUAL = 0x7F;

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
        occurrences(zip, rows);
        measurements(zip, rows);
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

    private static void occurrences(ZipOutputStream zip, List<Row> rows) throws IOException {
        begin(zip, OCCURRENCES);
        CsvWriter csv = csv(zip);
        csv.writeRecord(
                OccurrenceColumn.ALL.stream().map(OccurrenceColumn::term).toList());
        for (Row row : rows) {
            csv.writeRecord(OccurrenceColumn.ALL.stream()
                    .map(column -> oneLine(column.cell(row)))
                    .toList());
        }
        csv.flush();
        zip.closeEntry();
    }

    private static void measurements(ZipOutputStream zip, List<Row> rows) throws IOException {
        begin(zip, MEASUREMENTS);
        CsvWriter csv = csv(zip);
        List<String> header = new ArrayList<>(List.of("occurrenceID"));
        header.addAll(Measurement.TERMS);
        csv.writeRecord(header);
        for (Row row : rows) {
            for (Measurement measured : Measurement.of(row.occurrence())) {
                String id = NamedUuid.of(row.id() + "\n" + measured.type()).toString();
                csv.writeRecord(List.of(
                        row.id(),
                        "urn:uuid:" + id,
                        measured.type(),
                        measured.value(),
                        measured.unit(),
                        measured.method()));
            }
        }
        csv.flush();
        zip.closeEntry();
    }

    /** Writes through to the archive, so that a large one is never whole in memory; to be flushed, not closed. */
    private static CsvWriter csv(ZipOutputStream zip) {
        return CsvWriter.builder()
                .lineDelimiter(LineDelimiter.LF)
                .build(new OutputStreamWriter(zip, StandardCharsets.UTF_8));
    }

    /** Many readers of archives take a line for a record, quotes or not. */
    private static String oneLine(String cell) {
        // Nearly every cell is plain already, and there are millions of them.
        return cell.chars().allMatch(c -> c >= ' ' && c < FIRST_UNUSUAL)
                ? cell
                : LINE_BREAKS.matcher(cell).replaceAll(" ").strip();
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
        begin(zip, name);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static void begin(ZipOutputStream zip, String name) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
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

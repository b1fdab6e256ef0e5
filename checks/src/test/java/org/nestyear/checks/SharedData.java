package org.nestyear.checks;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The reference data beside the repository. It is not part of the repository, because most of it may be read but not
 * passed on; where it is absent the tests that need it are skipped, and the report says so.
 */
public final class SharedData {
    /** Environment variable with the folder that holds {@code data}. */
    private static final String VARIABLE = "NESTYEAR_SHARED";

    private SharedData() {}

    /** The folder {@code data}, or a skipped test where there is none. */
    public static Path folder() {
        String told = System.getenv(VARIABLE);
        Path shared = told == null || told.isBlank() ? Repository.root().resolveSibling("shared") : Path.of(told);
        Path data = shared.resolve("data");
        assumeTrue(
                Files.isDirectory(data),
                () -> "reference data not found at " + data + "; set " + VARIABLE + " to the folder that holds data");
        return data;
    }

    /**
     * A file of the reference data. A folder that is there but lacks the file is a failure, not a skip.
     *
     * @param path below {@code data}, with slashes; one folder may be written as an asterisk if one file fits
     */
    public static Path file(String path) {
        Path data = folder();
        PathMatcher matcher = data.getFileSystem().getPathMatcher("glob:" + path);
        try (Stream<Path> files = Files.walk(data)) {
            List<Path> fitting = files.filter(file -> matcher.matches(data.relativize(file)))
                    .filter(Files::isRegularFile)
                    .toList();
            if (fitting.size() != 1) {
                throw new IllegalStateException(fitting.size() + " files of the reference data fit " + path);
            }
            return fitting.get(0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rows of a CSV file of the reference data, by column name; never none. */
    public static List<NamedCsvRecord> rows(String path) {
        Path file = file(path);
        List<NamedCsvRecord> rows = new ArrayList<>();
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(file)) {
            reader.forEach(rows::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (rows.isEmpty()) {
            throw new IllegalStateException(path + " holds no row");
        }
        return rows;
    }

    /** A field as a number. */
    public static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }
}

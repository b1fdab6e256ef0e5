package org.nestyear.data;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.nestyear.core.forage.Flora;
import org.nestyear.core.source.Basis;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.source.Source;
import org.nestyear.core.species.Catalogue;
import org.nestyear.core.species.Species;

/** Reads the catalogue tables that ship with the program. */
public final class CatalogueFiles {
    private static final String FOLDER = "/catalogue/";
    private static final List<String> WORD_TABLES =
            List.of("plants", "regions", "bloom_words", "lodgers", "signs", "enemies");
    private static final List<String> SPECIES_FILES = List.of("species.csv", "leafcutters.csv");
    /** All tables of numbers; a test compares the list with the folder. */
    private static final List<String> TABLES = List.of(
            "mason_bees",
            "osmia_lignaria",
            "osmia_cornifrons",
            "osmia_bicornis",
            "osmia_cornuta",
            "megachile_rotundata",
            "bloom_models",
            "spring_index",
            "leafcutter_nesting",
            "flowers",
            "counting",
            "guests",
            "hygiene",
            "losses",
            "mud",
            "outlook",
            "reach",
            "sexing",
            "siting",
            "stocking");

    private CatalogueFiles() {}

    /**
     * The shipped catalogue.
     *
     * @throws IllegalStateException if a table is broken, which is a defect of the program
     */
    public static Catalogue load() {
        StringBuilder everything = new StringBuilder();
        Map<String, Source> sources = sources(everything);
        Map<String, ParameterTable> tables = new LinkedHashMap<>();
        List<Species> species = new ArrayList<>();
        // A plan chooses bloom models too, and lists the numbers it read for that among its own.
        ParameterTable models = table("bloom_models", sources, tables, everything)
                .completedBy(table("spring_index", sources, tables, everything));
        for (NamedCsvRecord row : rows("species.csv", everything)) {
            ParameterTable own = table(row.getField("table"), sources, tables, everything);
            ParameterTable general = table(row.getField("general"), sources, tables, everything);
            species.add(new Species(
                    row.getField("latin_name"),
                    row.getField("common_name"),
                    own.completedBy(general).completedBy(models)));
        }
        return new Catalogue(species, digest(everything));
    }

    /**
     * The leafcutter bees, which are warmed and not planned.
     *
     * @throws IllegalStateException if a table is broken, which is a defect of the program
     */
    public static Catalogue leafcutters() {
        StringBuilder everything = new StringBuilder();
        Map<String, Source> sources = sources(everything);
        Map<String, ParameterTable> tables = new LinkedHashMap<>();
        List<Species> species = new ArrayList<>();
        for (NamedCsvRecord row : rows("leafcutters.csv", everything)) {
            species.add(new Species(
                    row.getField("latin_name"),
                    row.getField("common_name"),
                    table(row.getField("table"), sources, tables, everything)));
        }
        return new Catalogue(species, digest(everything));
    }

    /**
     * Every table of numbers there is, the bees first.
     *
     * @throws IllegalStateException if a table is broken, which is a defect of the program
     */
    public static List<ParameterTable> all() {
        StringBuilder read = new StringBuilder();
        Map<String, Source> sources = sources(read);
        Map<String, ParameterTable> tables = new LinkedHashMap<>();
        return TABLES.stream().map(name -> table(name, sources, tables, read)).toList();
    }

    /**
     * The tables of words: plants, regions, and when the bloom words mean in each; sources are given in full.
     *
     * @throws IllegalStateException if a table is broken, which is a defect of the program
     */
    public static List<WordTable> wordTables() {
        Map<String, Source> sources = sources(new StringBuilder());
        List<WordTable> tables = new ArrayList<>();
        for (String name : WORD_TABLES) {
            List<NamedCsvRecord> records = rows(name + ".csv", new StringBuilder());
            List<String> head = records.get(0).getHeader();
            List<List<String>> rows = new ArrayList<>();
            for (NamedCsvRecord row : records) {
                rows.add(head.stream()
                        .map(column -> {
                            String cell = row.getField(column);
                            Source source = column.endsWith("source") ? sources.get(cell) : null;
                            return source == null ? cell : source.citation();
                        })
                        .toList());
            }
            tables.add(new WordTable(name, head, rows));
        }
        return tables;
    }

    /** The bees with a table of their own: Latin and common name by name of the table. */
    public static Map<String, String> speciesTables() {
        Map<String, String> names = new LinkedHashMap<>();
        for (String file : SPECIES_FILES) {
            for (NamedCsvRecord row : rows(file, new StringBuilder())) {
                names.put(row.getField("table"), row.getField("latin_name") + ", " + row.getField("common_name"));
            }
        }
        return names;
    }

    /**
     * The constants of the published bloom models, and the limits within which a model is fitted to a keeper's dates.
     *
     * @throws IllegalStateException if the table is broken, which is a defect of the program
     */
    public static ParameterTable bloomModels() {
        return single("bloom_models");
    }

    /**
     * The weights of the spring index.
     *
     * @throws IllegalStateException if the table is broken, which is a defect of the program
     */
    public static ParameterTable springIndex() {
        return single("spring_index");
    }

    /**
     * A table of the small calculators: {@code counting}, {@code hygiene} and the like, or of all mason bees.
     *
     * @throws IllegalStateException if there is no such table or it is broken, which is a defect of the program
     */
    public static ParameterTable sums(String name) {
        return single(name);
    }

    /**
     * The plant list with its numbers, regions and bloom words.
     *
     * @throws IllegalStateException if a table is broken, which is a defect of the program
     */
    public static Flora flora() {
        StringBuilder read = new StringBuilder();
        Map<String, Source> sources = sources(read);
        return FloraFiles.of(
                rows("plants.csv", read),
                rows("regions.csv", read),
                rows("bloom_words.csv", read),
                table("flowers", sources, new LinkedHashMap<>(), read),
                sources);
    }

    /** Text that changes with anything in the plant list. */
    public static String floraFingerprint() {
        StringBuilder read = new StringBuilder();
        for (String name : List.of("plants.csv", "regions.csv", "bloom_words.csv", "flowers.csv")) {
            rows(name, read);
        }
        return digest(read);
    }

    private static ParameterTable single(String name) {
        StringBuilder read = new StringBuilder();
        return table(name, sources(read), new LinkedHashMap<>(), read);
    }

    static Map<String, Source> sources(StringBuilder everything) {
        Map<String, Source> sources = new LinkedHashMap<>();
        for (NamedCsvRecord row : rows("sources.csv", everything)) {
            Source source = new Source(row.getField("key"), row.getField("citation"), row.getField("doi"));
            sources.put(source.key(), source);
        }
        return sources;
    }

    private static ParameterTable table(
            String name, Map<String, Source> sources, Map<String, ParameterTable> tables, StringBuilder everything) {
        ParameterTable known = tables.get(name);
        if (known != null) {
            return known;
        }
        List<Parameter> parameters = new ArrayList<>();
        for (NamedCsvRecord row : rows(name + ".csv", everything)) {
            parameters.add(parameter(name, row, sources));
        }
        ParameterTable table = new ParameterTable(name, parameters);
        tables.put(name, table);
        return table;
    }

    private static Parameter parameter(String table, NamedCsvRecord row, Map<String, Source> sources) {
        Source source = sources.get(row.getField("source"));
        if (source == null) {
            throw new IllegalStateException("catalogue table " + table + ", line " + row.getStartingLineNumber()
                    + ": no source has the key \"" + row.getField("source") + "\"");
        }
        return new Parameter(
                row.getField("id"),
                Double.parseDouble(row.getField("value")),
                row.getField("unit"),
                Double.parseDouble(row.getField("low")),
                Double.parseDouble(row.getField("high")),
                Basis.ofWord(row.getField("basis")),
                source,
                row.getField("locator"),
                row.getField("borrowed_from"),
                row.getField("note"));
    }

    static List<NamedCsvRecord> rows(String file, StringBuilder everything) {
        String text = text(file);
        everything.append(file).append('\n').append(text);
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(new StringReader(text))) {
            return reader.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(String file) {
        try (InputStream in = CatalogueFiles.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new IllegalStateException("the catalogue table " + file + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String digest(StringBuilder everything) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256")
                    .digest(everything.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}

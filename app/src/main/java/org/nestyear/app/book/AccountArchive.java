package org.nestyear.app.book;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.InstantSource;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.Refusal;
import org.nestyear.data.DataFault;
import org.nestyear.data.PlainTable;
import org.nestyear.data.PlainTableWriter;
import org.nestyear.records.Database;
import org.nestyear.records.book.RawTable;
import org.nestyear.records.book.WholeAccount;
import org.springframework.dao.DataAccessException;

/**
 * A whole account as one file, out and back without loss: a zip of the record tables as CSV with their ids, stamps and
 * history, the pictures, and a list of contents with checksums. The same account gives the same bytes.
 */
public final class AccountArchive {
    private static final String FORMAT = "1";
    private static final String ABOUT = "nestyear-archive.txt";
    private static final String CONTENTS = "contents.csv";
    private static final String TABLES = "tables/";
    private static final String PICTURES = "pictures/";
    private static final int ROWS_AT_ONCE = 1000;
    // Zip cannot tell a time before 1980; all entries bear the same, so that equal accounts give equal bytes.
    private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final WholeAccount account;
    private final String owner;

    /**
     * The account of an owner.
     *
     * @param source the records, brought up to date
     */
    public AccountArchive(DataSource source, InstantSource clock, String owner) {
        this.account = new WholeAccount(source, clock);
        this.owner = owner;
    }

    /**
     * What an archive holds.
     *
     * @param rows rows of each table, by its name
     * @param added how many rows were not there before; 0 when only looked at
     */
    public record Contents(Map<String, Integer> rows, int added) {
        public Contents {
            rows = Map.copyOf(rows);
        }

        /** Rows of all tables. */
        public int all() {
            return rows.values().stream().mapToInt(Integer::intValue).sum();
        }
    }

    /**
     * Writes the account.
     *
     * @param to receives the archive and stays open
     * @param progress told the name of each table before it is written
     */
    public Contents write(OutputStream to, Consumer<String> progress) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(to, StandardCharsets.UTF_8);
        List<List<String>> contents = new ArrayList<>();
        Map<String, Integer> counted = new LinkedHashMap<>();
        try {
            account.together(() -> {
                for (RawTable table : RawTable.list()) {
                    progress.accept(table.name());
                    counted.put(table.name(), writeTable(zip, table, contents));
                }
                account.eachPicture(owner, (sha256, bytes) -> writePicture(zip, sha256, bytes, contents));
                return counted;
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        open(zip, CONTENTS);
        Writer text = new OutputStreamWriter(zip, StandardCharsets.UTF_8);
        PlainTableWriter list = new PlainTableWriter(text);
        list.row(List.of("file", "rows", "sha256"));
        contents.forEach(list::row);
        list.finish();
        text.flush();
        zip.closeEntry();
        open(zip, ABOUT);
        zip.write(("format " + FORMAT + "\nschema " + Database.NEWEST + "\n").getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
        zip.finish();
        return new Contents(counted, 0);
    }

    private int writeTable(ZipOutputStream zip, RawTable table, List<List<String>> contents) {
        try {
            String name = TABLES + table.name() + ".csv";
            open(zip, name);
            DigestOutputStream digest = new DigestOutputStream(zip, sha256());
            Writer text = new BufferedWriter(new OutputStreamWriter(digest, StandardCharsets.UTF_8));
            PlainTableWriter csv = new PlainTableWriter(text);
            csv.row(table.columnNames());
            int[] rows = {0};
            account.each(table, owner, row -> {
                csv.row(row);
                rows[0]++;
            });
            csv.finish();
            text.flush();
            zip.closeEntry();
            contents.add(List.of(name, Integer.toString(rows[0]), hex(digest.getMessageDigest())));
            return rows[0];
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void writePicture(ZipOutputStream zip, String sha256, byte[] bytes, List<List<String>> contents) {
        try {
            open(zip, PICTURES + sha256);
            zip.write(bytes);
            zip.closeEntry();
            contents.add(List.of(PICTURES + sha256, "1", sha256));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void open(ZipOutputStream zip, String name) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(TIME);
        zip.putNextEntry(entry);
    }

    /**
     * Reads an archive into the account: rows that are there already are left, new ones are added.
     *
     * @param write false to look only
     * @param progress told the name of each table before it is read
     * @throws Refusal if it is no archive, is cut off or damaged, comes from a newer version, or tells something else than
     *     the account does; then nothing was written
     */
    public Contents read(Path file, boolean write, Consumer<String> progress) {
        try (ZipFile zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8)) {
            checkAbout(zip, file);
            Map<String, Integer> rows = checkContents(zip, file, progress);
            int added = account.together(() -> insertAll(zip, file, write, progress));
            return new Contents(rows, added);
        } catch (ZipException e) {
            throw damaged(file, "the file is cut off or is no archive of records", "an archive as export writes it");
        } catch (NoSuchFileException | FileNotFoundException e) {
            throw damaged(file, "there is no such file", "the path of an archive");
        } catch (IOException | UncheckedIOException e) {
            throw damaged(file, "the file is damaged or cannot be read", "an archive as export writes it");
        } catch (DataAccessException e) {
            throw damaged(
                    file,
                    "one of its entries clashes with one that is here",
                    "an account that is empty, or grew from the same one");
        } catch (DataFault e) {
            throw Refusal.of(e);
        }
    }

    private static void checkAbout(ZipFile zip, Path file) throws IOException {
        ZipEntry about = zip.getEntry(ABOUT);
        if (about == null) {
            throw damaged(file, "the file is no archive of records", "an archive as export writes it");
        }
        Map<String, String> told = new LinkedHashMap<>();
        new String(zip.getInputStream(about).readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .map(line -> line.split(" ", 2))
                .filter(words -> words.length == 2)
                .forEach(words -> told.put(words[0], words[1]));
        if (!FORMAT.equals(told.get("format")) || number(told.get("schema")) > Database.NEWEST) {
            throw damaged(
                    file,
                    "the archive comes from a newer version (format " + told.get("format") + ", tables "
                            + told.get("schema") + ")",
                    "format " + FORMAT + " and tables up to " + Database.NEWEST);
        }
    }

    private static int number(@Nullable String text) {
        try {
            return text == null ? Integer.MAX_VALUE : Integer.parseInt(text);
        } catch (NumberFormatException e) {
            return Integer.MAX_VALUE;
        }
    }

    // Every file is there, whole, and nothing else is.
    private static Map<String, Integer> checkContents(ZipFile zip, Path file, Consumer<String> progress)
            throws IOException {
        ZipEntry list = zip.getEntry(CONTENTS);
        if (list == null) {
            throw damaged(file, "its list of contents is missing", "an archive as export writes it");
        }
        Set<String> listed = new HashSet<>(Set.of(ABOUT, CONTENTS));
        Map<String, Integer> rows = new LinkedHashMap<>();
        List<List<String>> lines = new ArrayList<>();
        eachRow(zip, list, row -> lines.add(row.cells()));
        for (List<String> line : lines.subList(Math.min(1, lines.size()), lines.size())) {
            String name = line.get(0);
            listed.add(name);
            progress.accept(name);
            ZipEntry entry = zip.getEntry(name);
            if (entry == null) {
                throw damaged(file, name + " is missing in it", "an archive as export writes it");
            }
            MessageDigest digest = sha256();
            try (var in = zip.getInputStream(entry)) {
                byte[] buffer = new byte[1 << 16];
                for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                    digest.update(buffer, 0, read);
                }
            }
            if (!hex(digest).equals(line.get(2))) {
                throw damaged(file, name + " in it is damaged", "the checksum of its list of contents");
            }
            if (name.startsWith(TABLES)) {
                rows.put(name.substring(TABLES.length(), name.length() - ".csv".length()), number(line.get(1)));
            }
        }
        zip.stream()
                .map(ZipEntry::getName)
                .filter(name -> !listed.contains(name))
                .findFirst()
                .ifPresent(name -> {
                    throw damaged(
                            file, name + " in it is not in its list of contents", "an archive as export writes it");
                });
        return rows;
    }

    private int insertAll(ZipFile zip, Path file, boolean write, Consumer<String> progress) {
        try {
            int added = 0;
            for (RawTable table : RawTable.list()) {
                ZipEntry entry = zip.getEntry(TABLES + table.name() + ".csv");
                if (entry != null) {
                    progress.accept(table.name());
                    Rows rows = new Rows(table, file, write);
                    eachRow(zip, entry, row -> rows.take(row.cells()));
                    added += rows.finish();
                }
            }
            if (write) {
                for (ZipEntry picture : zip.stream()
                        .filter(e -> e.getName().startsWith(PICTURES))
                        .toList()) {
                    account.putPicture(
                            owner,
                            picture.getName().substring(PICTURES.length()),
                            zip.getInputStream(picture).readAllBytes());
                }
            }
            return added;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Rows of one table on their way in. */
    private final class Rows {
        private final RawTable table;
        private final Path file;
        private final boolean write;
        private final Map<String, List<String>> there;
        private final List<List<String>> waiting = new ArrayList<>();
        private List<String> header = List.of();
        private int added;

        Rows(RawTable table, Path file, boolean write) {
            this.table = table;
            this.file = file;
            this.write = write;
            this.there = account.rows(table, owner);
        }

        void take(List<String> cells) {
            if (header.isEmpty()) {
                header = cells;
                for (String name : header) {
                    if (!table.columnNames().contains(name)) {
                        throw damaged(
                                file, "its table " + table.name() + " has the column " + name, "columns known here");
                    }
                }
                return;
            }
            List<String> old = there.get(table.identity(cells));
            if (old == null) {
                waiting.add(cells);
                added++;
                if (waiting.size() >= ROWS_AT_ONCE) {
                    flush();
                }
            } else if (header.equals(table.columnNames()) && !old.equals(cells)) {
                throw damaged(
                        file,
                        "entry " + cells.get(0) + " of the table " + table.name() + " tells something else than here",
                        "an account that is empty, or grew from the same one");
            }
        }

        int finish() {
            flush();
            return added;
        }

        private void flush() {
            if (write && !waiting.isEmpty()) {
                account.insert(table, owner, header, List.copyOf(waiting));
            }
            waiting.clear();
        }
    }

    private static void eachRow(ZipFile zip, ZipEntry entry, Consumer<PlainTable.Row> take) throws IOException {
        try (BufferedReader text =
                new BufferedReader(new InputStreamReader(zip.getInputStream(entry), StandardCharsets.UTF_8))) {
            PlainTable.eachRow(entry.getName(), text, take);
        }
    }

    private static Refusal damaged(Path file, String found, String expected) {
        return new Refusal(
                Refusal.Kind.BAD_INPUT, "NY-ARCHIVE", file.toString(), found + "; expected " + expected + ".", "");
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String hex(MessageDigest digest) {
        return HexFormat.of().formatHex(digest.digest());
    }
}

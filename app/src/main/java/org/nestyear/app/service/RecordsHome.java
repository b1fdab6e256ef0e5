package org.nestyear.app.service;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.nestyear.records.Database;
import org.nestyear.records.DatabaseAddress;
import org.nestyear.records.OpenDatabase;
import org.nestyear.records.UnreadableRecordsException;

/** Where the keeper's records are: in a file of the data folder, or in a PostgreSQL database that one setting names. */
public final class RecordsHome {
    /** Environment variable with the address of a PostgreSQL database. */
    public static final String SETTING = "NESTYEAR_DATABASE";

    private final Path folder;
    private final DatabaseAddress address;

    private RecordsHome(Path folder, DatabaseAddress address) {
        this.folder = folder;
        this.address = address;
    }

    /** The file in a folder that exists. */
    public static RecordsHome in(Path folder) {
        return new RecordsHome(folder, new DatabaseAddress.InFolder(folder));
    }

    /**
     * What the environment says, unless the command line says otherwise. The data folder is made if it is not there.
     *
     * @param data data folder told on the command line; without a database told there too, the records are in its file
     * @param database address of a PostgreSQL database told on the command line
     * @throws Refusal if the folder cannot be made or the address is none
     */
    public static RecordsHome of(Map<String, String> environment, @Nullable Path data, @Nullable String database) {
        Path folder = folder(environment, data);
        String told = database != null ? database : data != null ? "" : environment.getOrDefault(SETTING, "");
        if (told.isBlank()) {
            return in(folder);
        }
        try {
            return new RecordsHome(
                    folder,
                    new DatabaseAddress.OnServer(
                            told, environment.get(SETTING + "_USER"), environment.get(SETTING + "_PASSWORD")));
        } catch (UnreadableRecordsException e) {
            throw refusal(e);
        }
    }

    private static Path folder(Map<String, String> environment, @Nullable Path data) {
        try {
            return DataFolder.make(
                    data == null
                            ? DataFolder.of(environment, System.getProperty("user.home"))
                            : data.toAbsolutePath().normalize());
        } catch (IllegalArgumentException e) {
            throw Refusal.usage(String.valueOf(e.getMessage()), "");
        }
    }

    /** The data folder, which exists. */
    public Path folder() {
        return folder;
    }

    /** Where the records are, in words, without any password. */
    public String words() {
        return address.words();
    }

    /** The file of the records, unless a server has them. */
    Optional<DatabaseAddress.InFolder> file() {
        return address instanceof DatabaseAddress.InFolder file ? Optional.of(file) : Optional.empty();
    }

    /**
     * Opens the records for as long as the program runs, and brings their tables up to date.
     *
     * @throws Refusal if they cannot be opened
     */
    public DataSource open() {
        try {
            OpenDatabase open = Database.open(address);
            // Closed when the program ends, so that the file alone then holds everything, without a log beside it.
            Runtime.getRuntime().addShutdownHook(new Thread(open::close, "records-close"));
            return open.source();
        } catch (UnreadableRecordsException e) {
            throw refusal(e);
        }
    }

    /** The same sentence for the keeper. */
    public static Refusal refusal(UnreadableRecordsException e) {
        return new Refusal(Refusal.Kind.BAD_INPUT, e.reason().code(), "", e.sentence(), e.advice());
    }
}

package org.nestyear.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;
import org.nestyear.core.season.Goal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** The seasons a keeper has opened. Safe for many threads. */
public final class SeasonShelf {
    // Milliseconds with three digits always, so that the text sorts as time does.
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT);

    private final JdbcClient jdbc;
    private final TransactionTemplate transaction;
    private final InstantSource clock;

    public SeasonShelf(DataSource source, InstantSource clock) {
        this.jdbc = JdbcClient.create(source);
        this.transaction = new TransactionTemplate(new DataSourceTransactionManager(source));
        this.clock = clock;
    }

    /** Keeps a newly opened season and makes it the owner's current one; all of it or nothing. */
    public StoredSeason open(String owner, SeasonSource source) {
        String id = UUID.randomUUID().toString();
        return Objects.requireNonNull(transaction.execute(status -> {
            Instant now = nextOpening(owner);
            StoredSeason season = new StoredSeason(id, owner, source, null, now, now, now);
            insert(season);
            return season;
        }));
    }

    /** The season the owner opened last, if any, with the files that came with it. */
    public Optional<StoredSeason> findCurrent(String owner) {
        return jdbc.sql("SELECT * FROM season WHERE owner = :owner ORDER BY opened_at DESC LIMIT 1")
                .param("owner", owner)
                .query(SeasonShelf::read)
                .optional()
                .map(this::withFiles);
    }

    /** All seasons the owner has opened, the current one first, without the files that came with them. */
    public List<SeasonSummary> list(String owner) {
        return jdbc.sql("SELECT id, kind, file_name, folder, opened_at FROM season"
                        + " WHERE owner = :owner ORDER BY opened_at DESC")
                .param("owner", owner)
                .query((row, number) -> new SeasonSummary(
                        row.getString("id"),
                        row.getString("kind"),
                        row.getString("file_name"),
                        row.getString("folder"),
                        Instant.parse(row.getString("opened_at"))))
                .list();
    }

    /**
     * Makes an earlier season the current one again.
     *
     * @return false if the owner has no such season
     */
    public boolean reopen(String owner, String id) {
        Integer changed = transaction.execute(status -> jdbc.sql(
                        "UPDATE season SET opened_at = :now, changed_at = :now WHERE id = :id AND owner = :owner")
                .param("now", text(nextOpening(owner)))
                .param("id", id)
                .param("owner", owner)
                .update());
        return Objects.equals(changed, 1);
    }

    /**
     * Keeps the aim the keeper chose for a season.
     *
     * @return false if the owner has no such season
     */
    public boolean chooseGoal(String owner, String id, Goal goal) {
        return jdbc.sql("UPDATE season SET goal = :goal, changed_at = :now WHERE id = :id AND owner = :owner")
                        .param("goal", goal.word())
                        .param("now", text(now()))
                        .param("id", id)
                        .param("owner", owner)
                        .update()
                == 1;
    }

    private void insert(StoredSeason season) {
        SeasonSource source = season.source();
        jdbc.sql("""
                        INSERT INTO season
                          (id, owner, kind, file_name, folder, season_text, opened_at, created_at, changed_at)
                        VALUES (:id, :owner, :kind, :name, :folder, :text, :now, :now, :now)
                        """)
                .param("id", season.id())
                .param("owner", season.owner())
                .param("kind", source.kind())
                .param("name", source.fileName())
                .param("folder", source instanceof SeasonSource.OnDisk disk ? disk.folder() : null)
                .param("text", source instanceof SeasonSource.Uploaded upload ? upload.seasonText() : null)
                .param("now", text(season.createdAt()))
                .update();
        if (source instanceof SeasonSource.Uploaded upload) {
            upload.files().forEach((name, content) -> insertFile(season, name, content));
        }
    }

    private void insertFile(StoredSeason season, String name, String content) {
        jdbc.sql("INSERT INTO season_file (season_id, file_name, file_text, created_at, changed_at)"
                        + " VALUES (:id, :name, :content, :now, :now)")
                .param("id", season.id())
                .param("name", name)
                .param("content", content)
                .param("now", text(season.createdAt()))
                .update();
    }

    private static StoredSeason read(ResultSet row, int number) throws SQLException {
        String goal = row.getString("goal");
        return new StoredSeason(
                row.getString("id"),
                row.getString("owner"),
                readSource(row),
                goal == null ? null : goalOf(goal),
                Instant.parse(row.getString("opened_at")),
                Instant.parse(row.getString("created_at")),
                Instant.parse(row.getString("changed_at")));
    }

    private static SeasonSource readSource(ResultSet row) throws SQLException {
        String name = row.getString("file_name");
        String kind = row.getString("kind");
        return switch (kind) {
            case "demo" -> new SeasonSource.Demo(name);
            case "path" -> new SeasonSource.OnDisk(row.getString("folder"), name);
            case "upload" -> new SeasonSource.Uploaded(name, row.getString("season_text"), Map.of());
            default -> throw new IllegalStateException("season kind \"" + kind + "\" is unknown");
        };
    }

    private StoredSeason withFiles(StoredSeason season) {
        if (!(season.source() instanceof SeasonSource.Uploaded upload)) {
            return season;
        }
        Map<String, String> files = new HashMap<>();
        jdbc.sql("SELECT file_name, file_text FROM season_file WHERE season_id = :id")
                .param("id", season.id())
                .query(row -> {
                    files.put(row.getString("file_name"), row.getString("file_text"));
                });
        return season.withSource(new SeasonSource.Uploaded(upload.fileName(), upload.seasonText(), files));
    }

    private static Goal goalOf(String word) {
        for (Goal goal : Goal.values()) {
            if (goal.word().equals(word)) {
                return goal;
            }
        }
        throw new IllegalStateException("aim \"" + word + "\" is unknown");
    }

    // Later than every opening before it, even when the computer's clock was set back: the order decides what is
    // current.
    private Instant nextOpening(String owner) {
        Instant now = now();
        return jdbc.sql("SELECT opened_at FROM season WHERE owner = :owner ORDER BY opened_at DESC LIMIT 1")
                .param("owner", owner)
                .query((row, number) ->
                        Instant.parse(row.getString("opened_at")).plusMillis(1))
                .optional()
                .filter(next -> next.isAfter(now))
                .orElse(now);
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    private static String text(Instant instant) {
        return STAMP.format(instant.atOffset(ZoneOffset.UTC));
    }
}

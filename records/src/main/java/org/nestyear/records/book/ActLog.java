package org.nestyear.records.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;

/** The acts that were done, in their order. */
final class ActLog {
    private final JdbcTemplate jdbc;
    private final InstantSource clock;

    ActLog(JdbcTemplate jdbc, InstantSource clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** The newest act that can be taken back and is none of taking back itself. */
    Optional<Act> findLast(String owner) {
        return jdbc
                .query(
                        "SELECT * FROM act WHERE owner = ? AND undone_by IS NULL AND undoes IS NULL"
                                + " ORDER BY created_at DESC, id DESC LIMIT 1",
                        ActLog::read,
                        owner)
                .stream()
                .findFirst();
    }

    /** An act by its id. */
    Optional<Act> find(String owner, String id) {
        return jdbc.query("SELECT * FROM act WHERE owner = ? AND id = ?", ActLog::read, owner, id).stream()
                .findFirst();
    }

    /** The newest acts, newest first. */
    List<Act> list(String owner, int most) {
        return jdbc.query(
                "SELECT * FROM act WHERE owner = ? ORDER BY created_at DESC, id DESC LIMIT ?",
                ActLog::read,
                owner,
                most);
    }

    void insert(By by, String id, Instant at, String words, @Nullable String undoes) {
        String stamp = Stamps.text(at);
        jdbc.update(
                "INSERT INTO act (id, owner, who, words, entries, undoes, undone_by, created_at, changed_at)"
                        + " VALUES (?, ?, ?, ?, 0, ?, NULL, ?, ?)",
                id,
                by.owner(),
                by.who(),
                words,
                undoes,
                stamp,
                stamp);
    }

    // Later than every act before it, even when the computer's clock was set back: the order decides what is undone.
    Instant nextTime(String owner) {
        Instant now = Stamps.now(clock);
        @Nullable
        String newest = jdbc.queryForObject("SELECT max(created_at) FROM act WHERE owner = ?", String.class, owner);
        if (newest == null) {
            return now;
        }
        Instant next = Instant.parse(newest).plusMillis(1);
        return next.isAfter(now) ? next : now;
    }

    void finish(By by, Act act, String id, int touched) {
        jdbc.update("UPDATE act SET entries = ? WHERE id = ? AND owner = ?", touched, id, by.owner());
        jdbc.update("UPDATE act SET undone_by = ? WHERE id = ? AND owner = ?", id, act.id(), by.owner());
    }

    static Act read(ResultSet row, int number) throws SQLException {
        return new Act(
                row.getString("id"),
                Instant.parse(row.getString("created_at")),
                row.getString("who"),
                row.getString("words"),
                row.getInt("entries"),
                row.getString("undoes"),
                row.getString("undone_by"));
    }
}

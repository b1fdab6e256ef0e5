package org.nestyear.records.book;

import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import javax.sql.DataSource;
import org.springframework.jdbc.core.JdbcTemplate;

/** The secret links under which a calendar of jobs may be read. Only digests of the secrets are kept. */
public final class FeedLinks {
    private final JdbcTemplate jdbc;
    private final InstantSource clock;

    public FeedLinks(DataSource source, InstantSource clock) {
        this.jdbc = new JdbcTemplate(source);
        this.clock = clock;
    }

    /**
     * A link.
     *
     * @param id made by the application
     * @param name whom it was given to
     * @param madeAt when
     * @param revoked whether it was taken back
     */
    public record Link(String id, String name, Instant madeAt, boolean revoked) {}

    /**
     * Keeps a new link.
     *
     * @param digest of its secret, 64 hexadecimal digits
     */
    public Link add(String owner, String name, String digest) {
        String id = RecordBook.newId();
        Instant now = Stamps.now(clock);
        jdbc.update(
                "INSERT INTO feed (id, owner, name, secret_sha256, revoked_at, created_at, changed_at)"
                        + " VALUES (?, ?, ?, ?, NULL, ?, ?)",
                id,
                owner,
                name,
                digest,
                Stamps.text(now),
                Stamps.text(now));
        return new Link(id, name, now, false);
    }

    /** All links, newest first, those taken back among them. */
    public List<Link> list(String owner) {
        return jdbc.query(
                "SELECT * FROM feed WHERE owner = ? ORDER BY created_at DESC, id DESC",
                (row, number) -> new Link(
                        row.getString("id"),
                        row.getString("name"),
                        Instant.parse(row.getString("created_at")),
                        row.getString("revoked_at") != null),
                owner);
    }

    /**
     * Takes a link back for good.
     *
     * @return false if there is none of this id, or it was taken back before
     */
    public boolean revoke(String owner, String id) {
        String now = Stamps.text(Stamps.now(clock));
        return jdbc.update(
                        "UPDATE feed SET revoked_at = ?, changed_at = ?"
                                + " WHERE owner = ? AND id = ? AND revoked_at IS NULL",
                        now,
                        now,
                        owner,
                        id)
                == 1;
    }

    /** Whose calendar a secret opens, if it has not been taken back. The digest is looked up, the secret never kept. */
    public Optional<String> findOwner(String digest) {
        return jdbc
                .queryForList(
                        "SELECT owner FROM feed WHERE secret_sha256 = ? AND revoked_at IS NULL", String.class, digest)
                .stream()
                .findFirst();
    }
}

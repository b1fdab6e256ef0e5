package org.nestyear.records.book;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** All rows of one owner as text, out of the database and into another, with their ids, stamps and history. */
public final class WholeAccount {
    private static final int ROWS_AT_ONCE = 1000;

    private final JdbcTemplate jdbc;
    private final TransactionTemplate transaction;
    private final InstantSource clock;

    public WholeAccount(DataSource source, InstantSource clock) {
        this.clock = clock;
        this.jdbc = new JdbcTemplate(source);
        this.jdbc.setFetchSize(ROWS_AT_ONCE);
        this.transaction = new TransactionTemplate(new DataSourceTransactionManager(source));
    }

    /** Runs a piece of work that sees the records as they were at its start, and writes all or nothing. */
    public <T> T together(Supplier<T> work) {
        return Objects.requireNonNull(transaction.execute(status -> work.get()));
    }

    /** Hands over the rows of a table in its order; a cell that holds nothing is empty text. */
    public void each(RawTable table, String owner, Consumer<List<String>> take) {
        String from = table.name().equals("season_file")
                ? "season_file WHERE season_id IN (SELECT id FROM season WHERE owner = ?)"
                : table.name() + " WHERE owner = ?";
        jdbc.query(
                "SELECT * FROM " + from + " ORDER BY " + String.join(", ", table.order()),
                row -> {
                    take.accept(read(table, row));
                },
                owner);
    }

    private static List<String> read(RawTable table, ResultSet row) throws SQLException {
        List<String> cells = new ArrayList<>(table.columns().size());
        for (RawTable.Cell cell : table.columns()) {
            @Nullable String value = EntryRows.read(column(cell), row);
            cells.add(value == null ? "" : value);
        }
        return cells;
    }

    /**
     * Puts rows into a table inside {@link #together}.
     *
     * @param columns names of the cells in each row, as {@link RawTable#columnNames}, or fewer where an older version knew
     *     fewer
     * @throws BadEntryException if a row cannot stand there
     */
    public void insert(RawTable table, String owner, List<String> columns, List<List<String>> rows) {
        boolean owned = !table.name().equals("season_file");
        List<RawTable.Cell> cells = columns.stream()
                .map(name -> table.columns().stream()
                        .filter(cell -> cell.name().equals(name))
                        .findFirst()
                        .orElseThrow())
                .toList();
        int places = cells.size() + (owned ? 1 : 0);
        String sql = "INSERT INTO " + table.name() + " (" + (owned ? "owner, " : "") + String.join(", ", columns)
                + ") VALUES (?" + ", ?".repeat(places - 1) + ")";
        jdbc.batchUpdate(sql, rows, ROWS_AT_ONCE, (PreparedStatement statement, List<String> row) -> {
            int at = 1;
            if (owned) {
                statement.setString(at++, owner);
            }
            for (int i = 0; i < cells.size(); i++) {
                String value = row.get(i);
                RawTable.Cell cell = cells.get(i);
                EntryRows.bind(statement, at++, column(cell), value.isEmpty() && cell.empty() ? null : value);
            }
        });
    }

    /** Every row that is there already, by what tells it from others. */
    public Map<String, List<String>> rows(RawTable table, String owner) {
        Map<String, List<String>> rows = new HashMap<>();
        each(table, owner, row -> rows.put(table.identity(row), row));
        return rows;
    }

    /** Hands over the pictures, by the SHA-256 of their bytes. */
    public void eachPicture(String owner, BiConsumer<String, byte[]> take) {
        List<String> all =
                jdbc.queryForList("SELECT sha256 FROM picture WHERE owner = ? ORDER BY sha256", String.class, owner);
        for (String sha256 : all) {
            byte[] content = jdbc.queryForObject(
                    "SELECT content FROM picture WHERE owner = ? AND sha256 = ?", byte[].class, owner, sha256);
            take.accept(sha256, Objects.requireNonNull(content));
        }
    }

    /** Keeps a picture, once. */
    public void putPicture(String owner, String sha256, byte[] content) {
        Integer there = jdbc.queryForObject(
                "SELECT count(*) FROM picture WHERE owner = ? AND sha256 = ?", Integer.class, owner, sha256);
        if (there == null || there == 0) {
            String stamp = Stamps.text(Stamps.now(clock));
            jdbc.update(
                    "INSERT INTO picture (owner, sha256, content, created_at, changed_at) VALUES (?, ?, ?, ?, ?)",
                    owner,
                    sha256,
                    content,
                    stamp,
                    stamp);
        }
    }

    // The kinds and ranges were judged when the row was first written; the tables themselves judge once more.
    private static Column column(RawTable.Cell cell) {
        return new Column(cell.name(), cell.name(), cell.kind(), !cell.empty(), 0, 0, List.of(), "");
    }
}

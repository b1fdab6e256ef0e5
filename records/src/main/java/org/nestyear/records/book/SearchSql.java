package org.nestyear.records.book;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A search as SQL. Names of columns are checked against the table, values are bound. */
record SearchSql(String select, String count, List<Object> values) {
    static SearchSql of(String owner, Search search) {
        boolean linked = search.equal().entrySet().stream()
                .anyMatch(e -> !e.getValue().isEmpty()
                        && search.sheet()
                                .column(e.getKey())
                                .filter(c -> c.kind() == ColumnKind.LINK)
                                .isPresent());
        // What belongs to one parent is few: an index that begins with the owner, though in the right order, must not
        // be taken for it, and none can be for a sum.
        StringBuilder where = new StringBuilder(linked ? " WHERE owner || '' = ?" : " WHERE owner = ?")
                .append(" AND removed_act IS NULL");
        List<Object> values = new ArrayList<>();
        values.add(owner);
        search.equal().forEach((name, value) -> {
            Column column = search.sheet()
                    .column(name)
                    .orElseThrow(
                            () -> new IllegalArgumentException(search.sheet().name() + " has no column " + name));
            if (value.isEmpty()) {
                where.append(" AND ").append(name).append(" IS NULL");
            } else {
                where.append(" AND ").append(name).append(" = ?");
                values.add(typed(column, value));
            }
        });
        @Nullable String day = search.dateColumn();
        if (day != null && search.from() != null) {
            where.append(" AND ").append(day).append(" >= ?");
            values.add(search.from());
        }
        if (day != null && search.to() != null) {
            where.append(" AND ").append(day).append(" <= ?");
            // The last day whole, also where times stand.
            values.add(search.to() + (day.equals("read_at") ? "T23:59:59" : ""));
        }
        String table = search.sheet().name();
        String down = search.newestFirst() ? " DESC" : "";
        String order = " ORDER BY " + (day != null && search.newestFirst() ? day + down + ", " : "") + "created_at"
                + down + ", id" + down;
        String limit = search.most() == Integer.MAX_VALUE && search.skip() == 0
                ? ""
                : " LIMIT " + search.most() + " OFFSET " + search.skip();
        return new SearchSql(
                "SELECT * FROM " + table + where + order + limit, "SELECT count(*) FROM " + table + where, values);
    }

    private static Object typed(Column column, String value) {
        return switch (column.kind()) {
            case WHOLE -> Integer.parseInt(value);
            case YES_NO -> value.equals("yes") ? 1 : 0;
            case NUMBER -> Double.parseDouble(value);
            default -> value;
        };
    }
}

package org.nestyear.records.book;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.springframework.jdbc.core.JdbcTemplate;

/** Whether what an entry links to is there, is the same owner's, and was not taken out. */
final class Links {
    private static final int BULK = 200;

    private Links() {}

    static boolean isBulk(int changes) {
        return changes > BULK;
    }

    /**
     * Looks at each link of an entry.
     *
     * @param known ids seen to be there, by table; filled on the way
     * @throws BadEntryException if a link leads nowhere
     */
    static void check(
            JdbcTemplate jdbc,
            String owner,
            Sheet sheet,
            Map<String, String> values,
            int index,
            Map<String, Set<String>> known) {
        for (Column column : sheet.columns()) {
            String id = values.get(column.name());
            if (column.kind() != ColumnKind.LINK || id == null) {
                continue;
            }
            Set<String> seen = known.computeIfAbsent(column.linkTo(), name -> new HashSet<>());
            if (seen.contains(id)) {
                continue;
            }
            Integer there = jdbc.queryForObject(
                    "SELECT count(*) FROM " + column.linkTo() + " WHERE id = ? AND owner = ? AND removed_act IS NULL",
                    Integer.class,
                    id,
                    owner);
            if (there == null || there == 0) {
                throw new BadEntryException(
                        index,
                        column.name(),
                        column.name() + " is \"" + id + "\", which is not there",
                        column.expected());
            }
            seen.add(id);
        }
    }
}

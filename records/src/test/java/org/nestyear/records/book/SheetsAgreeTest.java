package org.nestyear.records.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.nestyear.records.OnBothDatabases;

/** The description of the tables and the tables that the migrations make are the same. */
class SheetsAgreeTest extends OnBothDatabases {
    @Test
    void everyTableHasTheColumnsItsDescriptionSays() throws SQLException {
        try (Connection connection = source().getConnection()) {
            for (Sheet sheet : Sheets.list()) {
                List<String> described = new ArrayList<>(EntryRows.KEPT);
                described.addAll(sheet.columnNames());
                List<String> made = new ArrayList<>();
                Set<String> required = new HashSet<>();
                try (ResultSet columns =
                        connection.getMetaData().getColumns(null, connection.getSchema(), sheet.name(), null)) {
                    while (columns.next()) {
                        String name = columns.getString("COLUMN_NAME").toLowerCase(Locale.ROOT);
                        made.add(name);
                        if (columns.getString("IS_NULLABLE").equals("NO")) {
                            required.add(name);
                        }
                    }
                }
                assertThat(made).as(sheet.name()).isEqualTo(described);
                for (Column column : sheet.columns()) {
                    assertThat(required.contains(column.name()))
                            .as(sheet.name() + "." + column.name())
                            .isEqualTo(column.required());
                }
            }
        }
    }

    @Test
    void parentsStandBeforeTheTablesThatLinkToThem() {
        Set<String> seen = new HashSet<>();
        for (Sheet sheet : Sheets.list()) {
            seen.add(sheet.name());
            for (Column column : sheet.columns()) {
                if (column.kind() == ColumnKind.LINK) {
                    assertThat(seen).as(sheet.name()).contains(column.linkTo());
                }
            }
            assertThat(sheet.columnNames()).as(sheet.name()).containsAll(sheet.key());
            sheet.rules()
                    .forEach(rule -> assertThat(sheet.column(rule.column())).isPresent());
        }
    }
}

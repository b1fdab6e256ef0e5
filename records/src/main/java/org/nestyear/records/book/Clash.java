package org.nestyear.records.book;

import java.sql.SQLException;
import org.springframework.dao.DataAccessException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Tells why a database refused a row. */
final class Clash {
    // SQLSTATE of ISO 9075 class 23 as PostgreSQL refines it.
    private static final String UNIQUE = "23505";

    private Clash() {}

    /** Whether a row of that key is there already. */
    static boolean isTwice(DataAccessException problem) {
        if (!(problem.getMostSpecificCause() instanceof SQLException cause)) {
            return false;
        }
        if (cause instanceof SQLiteException lite) {
            return lite.getResultCode() == SQLiteErrorCode.SQLITE_CONSTRAINT_UNIQUE
                    || lite.getResultCode() == SQLiteErrorCode.SQLITE_CONSTRAINT_PRIMARYKEY;
        }
        return UNIQUE.equals(cause.getSQLState());
    }
}

package org.nestyear.records;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.datasource.DelegatingDataSource;

/**
 * Connections to PostgreSQL whose transactions take the write lock at their start, one after the other, as they do in the
 * SQLite file. What reads and then writes is thus right on both databases or on neither. A transaction told to be read-only
 * waits for nobody.
 */
final class OneWriter extends DelegatingDataSource {
    // Any number does, so long as nothing else in the same database uses it: "nestyear" in letters of a telephone.
    private static final long LOCK = 63_78_93_27L;
    private static final int WAIT_MILLISECONDS = 5000;

    OneWriter(DataSource pool) {
        super(pool);
    }

    @Override
    public Connection getConnection() throws SQLException {
        Connection connection = super.getConnection();
        return (Connection) Proxy.newProxyInstance(
                OneWriter.class.getClassLoader(), new Class<?>[] {Connection.class}, new Locking(connection));
    }

    private static void takeTurn(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute("SET LOCAL lock_timeout = " + WAIT_MILLISECONDS);
            statement.execute("SELECT pg_advisory_xact_lock(" + LOCK + ")");
        }
    }

    private record Locking(Connection connection) implements InvocationHandler {
        @Override
        public @Nullable Object invoke(Object proxy, Method method, @Nullable Object @Nullable [] arguments)
                throws Throwable {
            try {
                Object result = method.invoke(connection, arguments);
                if (arguments != null
                        && method.getName().equals("setAutoCommit")
                        && Boolean.FALSE.equals(arguments[0])
                        && !connection.isReadOnly()) {
                    takeTurn(connection);
                }
                return result;
            } catch (InvocationTargetException e) {
                throw e.getCause() == null ? e : e.getCause();
            }
        }
    }
}

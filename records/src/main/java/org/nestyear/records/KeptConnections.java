package org.nestyear.records;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Collections;
import java.util.Set;
import java.util.WeakHashMap;
import java.util.concurrent.BlockingDeque;
import java.util.concurrent.LinkedBlockingDeque;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.datasource.DelegatingDataSource;

/**
 * Connections to the SQLite file that are used again. To open one costs more than most questions, and to close the last
 * one makes SQLite empty its log into the file. There are as many as are asked for at once, so that nobody waits; a few
 * of them are kept. At the end of the program they are closed, so that the file alone then holds everything.
 */
final class KeptConnections extends DelegatingDataSource implements AutoCloseable {
    private static final int KEPT = 4;
    private static final Set<KeptConnections> OPEN =
            Collections.synchronizedSet(Collections.newSetFromMap(new WeakHashMap<>()));

    static {
        Runtime.getRuntime()
                .addShutdownHook(new Thread(() -> Set.copyOf(OPEN).forEach(KeptConnections::close), "records"));
    }

    private final BlockingDeque<Connection> idle = new LinkedBlockingDeque<>(KEPT);
    private volatile boolean closed;

    KeptConnections(DataSource source) {
        super(source);
        OPEN.add(this);
    }

    @Override
    public Connection getConnection() throws SQLException {
        @Nullable Connection kept = idle.pollFirst();
        return (Connection) Proxy.newProxyInstance(
                KeptConnections.class.getClassLoader(),
                new Class<?>[] {Connection.class},
                new Lent(kept == null ? super.getConnection() : kept));
    }

    /** Closes what is idle; what is lent out is closed when it comes back. */
    @Override
    public void close() {
        closed = true;
        for (Connection each = idle.pollFirst(); each != null; each = idle.pollFirst()) {
            try {
                each.close();
            } catch (SQLException e) {
                // The next to open the file finds the log and takes what is in it.
            }
        }
    }

    private void giveBack(Connection connection) throws SQLException {
        if (connection.isClosed()) {
            return;
        }
        if (!connection.getAutoCommit()) {
            connection.rollback();
            connection.setAutoCommit(true);
        }
        if (closed || !idle.offerFirst(connection)) {
            connection.close();
        }
    }

    private final class Lent implements InvocationHandler {
        private final Connection connection;
        private boolean back;

        Lent(Connection connection) {
            this.connection = connection;
        }

        @Override
        public @Nullable Object invoke(Object proxy, Method method, @Nullable Object @Nullable [] arguments)
                throws Throwable {
            String name = method.getName();
            if (name.equals("close")) {
                if (!back) {
                    back = true;
                    giveBack(connection);
                }
                return null;
            }
            if (name.equals("isClosed") && back) {
                return true;
            }
            if (back) {
                throw new SQLException("the connection was given back");
            }
            try {
                return method.invoke(connection, arguments);
            } catch (InvocationTargetException e) {
                throw e.getCause() == null ? e : e.getCause();
            }
        }
    }
}

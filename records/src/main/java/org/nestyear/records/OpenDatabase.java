package org.nestyear.records;

import javax.sql.DataSource;

/** Records that are open, with tables of the newest version. */
public final class OpenDatabase implements AutoCloseable {
    private final DatabaseAddress address;
    private final DataSource source;
    private final Runnable closing;

    OpenDatabase(DatabaseAddress address, DataSource source, Runnable closing) {
        this.address = address;
        this.source = source;
        this.closing = closing;
    }

    public DatabaseAddress address() {
        return address;
    }

    /** Gives connections; safe for many threads. */
    public DataSource source() {
        return source;
    }

    /** Gives the records up, so that others may replace them; nothing is lost by ending the program without it. */
    @Override
    public void close() {
        closing.run();
    }
}

package org.nestyear.core.source;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads from a table and remembers which rows were read, so that an answer can list exactly its own sources. */
public final class ReadLog implements ParameterReader {
    private final ParameterTable table;
    private final Map<String, Parameter> read = new LinkedHashMap<>();

    public ReadLog(ParameterTable table) {
        this.table = table;
    }

    @Override
    public double value(String id) {
        return row(id).value();
    }

    /** The whole row, counted as read. */
    public Parameter row(String id) {
        Parameter row = table.get(id);
        read.put(id, row);
        return row;
    }

    /** The rows read so far, in the order of their first reading. */
    public List<Parameter> read() {
        return List.copyOf(read.values());
    }
}

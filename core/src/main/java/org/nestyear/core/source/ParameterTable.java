package org.nestyear.core.source;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A named, immutable set of parameters, in the order of the catalogue file. */
public final class ParameterTable implements ParameterReader {
    private final String name;
    private final Map<String, Parameter> rows;

    /**
     * @throws IllegalArgumentException if two rows share an id
     */
    public ParameterTable(String name, Collection<Parameter> rows) {
        this.name = name;
        Map<String, Parameter> byId = new LinkedHashMap<>();
        for (Parameter row : rows) {
            if (byId.put(row.id(), row) != null) {
                throw new IllegalArgumentException("table " + name + " has two rows with the id \"" + row.id() + "\"");
            }
        }
        this.rows = Collections.unmodifiableMap(byId);
    }

    /** The name of the table, for instance a species. */
    public String name() {
        return name;
    }

    /** All rows in file order. */
    public Collection<Parameter> rows() {
        return rows.values();
    }

    /**
     * The row with this id.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Parameter get(String id) {
        @Nullable Parameter row = rows.get(id);
        if (row == null) {
            throw new IllegalArgumentException("table " + name + " has no parameter \"" + id + "\"");
        }
        return row;
    }

    /** True when the table holds a row with this id. */
    public boolean has(String id) {
        return rows.containsKey(id);
    }

    @Override
    public double value(String id) {
        return get(id).value();
    }

    /** This table with the rows of {@code general} added wherever it has none of its own. */
    public ParameterTable completedBy(ParameterTable general) {
        Map<String, Parameter> all = new LinkedHashMap<>(general.rows);
        all.putAll(rows);
        return new ParameterTable(name, all.values());
    }
}

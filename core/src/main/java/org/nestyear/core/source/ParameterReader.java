package org.nestyear.core.source;

/** The model's only way to a number about bees or plants: by name, so that every read can be listed afterwards. */
public interface ParameterReader {
    /**
     * The value of a parameter in the unit of its catalogue row.
     *
     * @throws IllegalArgumentException if there is no such parameter
     */
    double value(String id);
}

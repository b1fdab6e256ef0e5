package org.nestyear.core.count;

import org.nestyear.core.source.ParameterReader;

/**
 * How many samples to draw from a traded lot of loose leafcutter cells by the number of its containers: the plan of the
 * Canadian producer guide, appendix C.
 */
public final class ContainerSamples {
    private ContainerSamples() {}

    /**
     * Samples in all.
     *
     * @param containers 1 or more
     */
    public static int of(int containers, ParameterReader parameters) {
        if (containers < 1) {
            throw new IllegalArgumentException("a lot has one container or more, got " + containers);
        }
        double samples;
        if (containers <= parameters.value("containers_most_each_to")) {
            samples = containers * parameters.value("samples_each_most");
        } else if (containers <= parameters.value("containers_two_each_to")) {
            samples = containers * 2.0;
        } else if (containers <= parameters.value("containers_one_each_to")) {
            samples = containers;
        } else if (containers <= parameters.value("containers_few_to")) {
            samples = parameters.value("samples_few");
        } else if (containers <= parameters.value("containers_some_to")) {
            samples = parameters.value("samples_some");
        } else {
            samples = parameters.value("samples_many");
        }
        return (int) Math.round(samples);
    }
}

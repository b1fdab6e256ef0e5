package org.nestyear.app.service;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.nestyear.core.release.InOrder;

/** On as many processors as there are. Nothing is added up across them, so the answer is the same to the last digit. */
final class AllCores implements InOrder {
    @Override
    public <T> List<T> map(int count, IntFunction<T> work) {
        return IntStream.range(0, count).parallel().mapToObj(work).toList();
    }
}

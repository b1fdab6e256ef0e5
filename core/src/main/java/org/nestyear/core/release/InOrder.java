package org.nestyear.core.release;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Works out many things that do not depend on each other, one after another or several at once. */
public interface InOrder {
    /** One after another. */
    InOrder ONE_BY_ONE = new InOrder() {
        @Override
        public <T> List<T> map(int count, IntFunction<T> work) {
            return IntStream.range(0, count).mapToObj(work).toList();
        }
    };

    /**
     * The results for 0 to {@code count} − 1, in that order.
     *
     * @param work depends on nothing but its number
     */
    <T> List<T> map(int count, IntFunction<T> work);
}

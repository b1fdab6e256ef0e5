package org.nestyear.core.stats;

import java.util.SplittableRandom;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.source.ParameterTable;

/**
 * One draw of a table's values: each from the triangle between its low, its value and its high. A draw depends on its number and the row's id only, never on the order of reading.
 */
public final class DrawnParameters implements ParameterReader {
    private final ParameterTable table;
    private final long draw;

    /**
     * Makes a draw.
     *
     * @param draw number of the draw; the same number gives the same values
     */
    public DrawnParameters(ParameterTable table, long draw) {
        this.table = table;
        this.draw = draw;
    }

    @Override
    public double value(String id) {
        Parameter row = table.get(id);
        double width = row.high() - row.low();
        if (width <= 0) {
            return row.value();
        }
        double u = new SplittableRandom(draw * 31 + id.hashCode()).nextDouble();
        double left = row.value() - row.low();
        double turn = left / width;
        return u < turn
                ? row.low() + Math.sqrt(u * width * left)
                : row.high() - Math.sqrt((1 - u) * width * (width - left));
    }
}

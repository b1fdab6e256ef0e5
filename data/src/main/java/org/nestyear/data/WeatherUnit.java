package org.nestyear.data;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Units a heading can name, with the way to the unit used inside: °C, mm, m/s, MJ/m² a day. Factors are exact by
 * definition: inch 25.4 mm, mile 1609.344 m, nautical mile 1852 m, day 86 400 s.
 */
enum WeatherUnit {
    CELSIUS("°C", 1, 0, List.of("c", "degc", "deg_c", "celsius")),
    FAHRENHEIT("°F", 5 / 9.0, -160 / 9.0, List.of("f", "degf", "deg_f", "fahrenheit")),
    MILLIMETRE("mm", 1, 0, List.of("mm")),
    CENTIMETRE("cm", 10, 0, List.of("cm")),
    INCH("in", 25.4, 0, List.of("in", "inch", "inches")),
    METRE_PER_SECOND("m/s", 1, 0, List.of("m_s", "ms", "mps")),
    KILOMETRE_PER_HOUR("km/h", 1 / 3.6, 0, List.of("km_h", "kmh", "kph")),
    MILE_PER_HOUR("mph", 0.44704, 0, List.of("mph", "mp_h")),
    KNOT("kn", 1852 / 3600.0, 0, List.of("kn", "kt", "knots")),
    MEGAJOULE("MJ/m²", 1, 0, List.of("mj_m2", "mj_m_2", "mj")),
    WATT("W/m²", 0.0864, 0, List.of("w_m2", "w_m_2"));

    private final String symbol;
    private final double factor;
    private final double offset;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    private final List<String> suffixes;

    WeatherUnit(String symbol, double factor, double offset, List<String> suffixes) {
        this.symbol = symbol;
        this.factor = factor;
        this.offset = offset;
        this.suffixes = suffixes;
    }

    String symbol() {
        return symbol;
    }

    /** The value in °C, mm, m/s or MJ/m². */
    double toOwn(double value) {
        return value * factor + offset;
    }

    /** Units a column can be in, the first being the one meant when the heading names none. */
    static List<WeatherUnit> of(WeatherColumn column) {
        return switch (column) {
            case MIN, MAX -> List.of(CELSIUS, FAHRENHEIT);
            case RAIN -> List.of(MILLIMETRE, CENTIMETRE, INCH);
            case WIND -> List.of(METRE_PER_SECOND, KILOMETRE_PER_HOUR, MILE_PER_HOUR, KNOT);
            case RADIATION -> List.of(MEGAJOULE, WATT);
            case DATE, PLACE -> List.of();
        };
    }

    /** The unit of this column written as this suffix, or null. */
    static @Nullable WeatherUnit find(WeatherColumn column, String suffix) {
        for (WeatherUnit unit : of(column)) {
            if (unit.suffixes.contains(suffix)) {
                return unit;
            }
        }
        return null;
    }
}

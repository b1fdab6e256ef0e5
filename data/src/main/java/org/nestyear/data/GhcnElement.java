package org.nestyear.data;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The values of GHCN-Daily that a plan reads. All of them are written as whole tenths.
 *
 * <p>Limits are wider than any value ever measured (WMO archive of extremes, from memory); beyond them the file is not
 * what it seems to be.
 */
enum GhcnElement {
    TMAX("the highest temperature", "°C", -950, 600),
    TMIN("the lowest temperature", "°C", -950, 600),
    PRCP("the rain", "mm", 0, 20_000),
    AWND("the mean wind", "m/s", 0, 1_000);

    private final String words;
    private final String unit;
    private final int leastTenths;
    private final int mostTenths;

    GhcnElement(String words, String unit, int leastTenths, int mostTenths) {
        this.words = words;
        this.unit = unit;
        this.leastTenths = leastTenths;
        this.mostTenths = mostTenths;
    }

    /** The element with this name, or null when a plan does not read it. */
    static @Nullable GhcnElement find(String name) {
        for (GhcnElement element : values()) {
            if (element.name().equals(name)) {
                return element;
            }
        }
        return null;
    }

    /** What it is, in words. */
    String words() {
        return words;
    }

    /** Its heading in our own names. */
    String column() {
        return switch (this) {
            case TMAX -> "tmax_c (tenths of °C)";
            case TMIN -> "tmin_c (tenths of °C)";
            case PRCP -> "rain_mm (tenths of mm)";
            case AWND -> "wind_m_s (tenths of m/s)";
        };
    }

    /** True for a value that can have been measured. */
    boolean holds(int tenths) {
        return tenths >= leastTenths && tenths <= mostTenths;
    }

    /** The limits in words. */
    String limits() {
        return String.format(
                Locale.ROOT,
                "tenths from %d to %d, %d to %d %s",
                leastTenths,
                mostTenths,
                leastTenths / 10,
                mostTenths / 10,
                unit);
    }
}

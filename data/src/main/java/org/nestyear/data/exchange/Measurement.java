package org.nestyear.data.exchange;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.data.exchange.NestOccurrence.Found;

/**
 * One number measured on an occurrence: a line of {@code measurementorfact.txt}.
 *
 * @param type what was measured
 * @param value the number
 * @param unit of the number; counts name what is counted
 * @param method how it was found
 */
record Measurement(String type, String value, String unit, String method) {
    /** Local names of the Darwin Core terms, one a column behind the occurrence's id. */
    static final List<String> TERMS =
            List.of("measurementID", "measurementType", "measurementValue", "measurementUnit", "measurementMethod");

    private static final String OPENED = "nest opened, cells counted by eye";

    /** All that was counted or measured, in a fixed order. */
    static List<Measurement> of(NestOccurrence seen) {
        List<Measurement> all = new ArrayList<>();
        Found found = seen.found();
        count(all, "plugged nest tunnels", found.pluggedTunnels(), "tunnels", "counted from outside, by eye");
        count(all, "brood cells", found.cells(), "cells", OPENED);
        count(all, "living females", found.females(), "individuals", OPENED + "; sex judged by the keeper");
        count(all, "living males", found.males(), "individuals", OPENED + "; sex judged by the keeper");
        count(all, "living, sex not judged", found.unsexed(), "individuals", OPENED);
        found.losses()
                .forEach((cause, count) -> count(
                        all,
                        "cells lost to " + cause.label(),
                        count,
                        "cells",
                        OPENED + "; a cell has one cause only, the first that explains it"));
        if (seen.holeWidthMm() != null) {
            all.add(new Measurement(
                    "inner width of the nest tunnels",
                    Numbers.plain(seen.holeWidthMm(), 2),
                    "mm",
                    "as told by the keeper"));
        }
        return all;
    }

    private static void count(List<Measurement> all, String type, @Nullable Integer count, String unit, String method) {
        if (count != null) {
            all.add(new Measurement(type, count.toString(), unit, method));
        }
    }
}

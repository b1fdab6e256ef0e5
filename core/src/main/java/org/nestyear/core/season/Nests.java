package org.nestyear.core.season;

/**
 * Free tunnels of one kind and size.
 *
 * @param kind what they are made as
 * @param openable whether they can be opened without breaking them
 * @param holeWidthMm inner width of a tunnel, mm
 * @param lengthMm depth of a tunnel, mm
 * @param count free tunnels, 0 or more
 */
public record Nests(NestKind kind, boolean openable, double holeWidthMm, double lengthMm, int count) {
    public Nests {
        if (!(holeWidthMm > 0) || !(lengthMm > 0) || count < 0) {
            throw new IllegalArgumentException(
                    "nests need a width and a length above 0 mm and a count of 0 or more, got " + holeWidthMm + " mm, "
                            + lengthMm + " mm, " + count);
        }
    }
}

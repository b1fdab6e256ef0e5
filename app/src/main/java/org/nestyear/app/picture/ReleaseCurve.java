package org.nestyear.app.picture;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import org.nestyear.core.release.CurvePoint;

/**
 * What the picture of a release curve shows.
 *
 * @param title name of the picture, read out first
 * @param description the picture in a sentence or two, for those who do not see it
 * @param scoreWords what the upright axis counts
 * @param points the curve, at least two dates in order
 * @param windowFrom first day of the release window
 * @param windowTo last day of the release window
 * @param windowWords what is written over the window
 * @param meanWords what the line is
 * @param bandWords what the band is
 * @param lanes the dates beneath the curve
 * @param shortDate writes a date along the axis
 */
public record ReleaseCurve(
        String title,
        String description,
        String scoreWords,
        List<CurvePoint> points,
        LocalDate windowFrom,
        LocalDate windowTo,
        String windowWords,
        String meanWords,
        String bandWords,
        List<Lane> lanes,
        Function<LocalDate, String> shortDate) {
    public ReleaseCurve {
        if (points.size() < 2) {
            throw new IllegalArgumentException("a curve needs at least two dates, got " + points.size());
        }
        points = List.copyOf(points);
        lanes = List.copyOf(lanes);
    }

    LocalDate first() {
        return points.get(0).date();
    }

    LocalDate last() {
        return points.get(points.size() - 1).date();
    }
}

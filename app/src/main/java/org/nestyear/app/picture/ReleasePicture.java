package org.nestyear.app.picture;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.nestyear.core.release.CurvePoint;

/**
 * Draws a release curve: the mean as a line, the band around it, the release window hatched, and beneath it the lanes.
 * The picture holds class names instead of colours, so that screen and paper can each use their own.
 */
public final class ReleasePicture {
    private static final double FULL_SCORE = 1.0;
    /** Room above the highest band, so that its top is seen. */
    private static final double HEADROOM = 1.05;

    private static final int SCORE_TICKS = 8;

    private final ReleaseCurve curve;
    private final Frame frame;
    private final DateScale days;
    private final LinearScale scores;
    private final SvgText svg = new SvgText();

    private ReleasePicture(ReleaseCurve curve, Frame frame) {
        this.curve = curve;
        this.frame = frame;
        this.days = daysShown(curve, frame);
        double highest =
                curve.points().stream().mapToDouble(CurvePoint::p90).max().orElse(FULL_SCORE);
        this.scores = new LinearScale(0, Math.max(FULL_SCORE, HEADROOM * highest), frame.plotBottom(), frame.top());
    }

    /**
     * The picture as SVG text with a view box, a title and a description.
     *
     * @throws IllegalArgumentException if a score is not a finite number
     */
    public static String draw(ReleaseCurve curve, Frame frame) {
        return new ReleasePicture(curve, frame).draw();
    }

    // Wide enough for the curve and for spans that begin or end near it; a far date is shown at the edge instead.
    private static DateScale daysShown(ReleaseCurve curve, Frame frame) {
        LocalDate from = curve.first();
        LocalDate to = curve.last();
        LocalDate earliest = from.minusDays(14);
        LocalDate latest = to.plusDays(14);
        for (Lane lane : curve.lanes()) {
            for (LocalDate day : List.of(lane.from(), lane.at(), lane.to())) {
                if (day.isBefore(from) && !day.isBefore(earliest)) {
                    from = day;
                }
                if (day.isAfter(to) && !day.isAfter(latest)) {
                    to = day;
                }
            }
        }
        return new DateScale(from, to, frame.left(), frame.plotRight());
    }

    private String draw() {
        LaneRows rows = LaneRows.of(curve.lanes(), days, frame);
        double legendTop = frame.plotBottom() + frame.line() * 1.3 + rows.height();
        Legend legend = new Legend(frame, legendTop);
        double height = legendTop + legend.height(curve) + frame.text() * 0.4;

        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 " + SvgText.number(frame.width()) + " " + SvgText.number(height),
                "class",
                "picture " + frame.key(),
                "font-size",
                frame.text(),
                "role",
                "img",
                "aria-labelledby",
                frame.key() + "-title " + frame.key() + "-desc");
        svg.words("title", curve.title(), "id", frame.key() + "-title");
        svg.words("desc", curve.description(), "id", frame.key() + "-desc");
        hatching();
        window();
        scoreAxis();
        band();
        line();
        dateAxis();
        rows.draw(svg);
        legend.draw(svg, curve);
        return svg.close().finish();
    }

    private void hatching() {
        svg.open("defs");
        stripes("window", "M-2,2 l4,-4 M0,10 l10,-10 M8,12 l4,-4", "hatch");
        stripes("bloom", "M-2,8 l4,4 M0,0 l10,10 M8,-2 l4,4", "stripe");
        svg.close();
    }

    private void stripes(String name, String path, String lineClass) {
        svg.open(
                "pattern", "id", frame.key() + "-" + name, "width", 10, "height", 10, "patternUnits", "userSpaceOnUse");
        svg.empty("rect", "width", 10, "height", 10, "class", lineClass + "-ground");
        svg.empty("path", "d", path, "class", lineClass);
        svg.close();
    }

    private void window() {
        double left = days.leftEdge(days.clamp(curve.windowFrom()));
        double right = days.rightEdge(days.clamp(curve.windowTo()));
        svg.empty(
                "rect",
                "class",
                "window",
                "x",
                left,
                "y",
                frame.top(),
                "width",
                right - left,
                "height",
                frame.plotHeight(),
                "fill",
                "url(#" + frame.key() + "-window)");
        double half = Words.width(curve.windowWords(), frame.text()) / 2;
        double middle = Math.min(Math.max((left + right) / 2, half), frame.width() - half);
        svg.words(
                "text",
                curve.windowWords(),
                "class",
                "strong",
                "x",
                middle,
                "y",
                frame.top() - frame.text() * 0.45,
                "text-anchor",
                "middle");
    }

    private void scoreAxis() {
        svg.words("text", curve.scoreWords(), "x", 0, "y", frame.text());
        for (double tick : scores.ticks(SCORE_TICKS)) {
            double y = scores.at(tick);
            svg.empty("line", "class", "grid", "x1", frame.left(), "x2", frame.plotRight(), "y1", y, "y2", y);
            svg.words(
                    "text",
                    String.format(Locale.ROOT, "%.0f\u00a0%%", tick * 100),
                    "x",
                    frame.left() - 6,
                    "y",
                    y + frame.text() * 0.35,
                    "text-anchor",
                    "end");
        }
    }

    private void band() {
        List<String> outline = new ArrayList<>(corners(curve.points(), CurvePoint::p90));
        List<CurvePoint> back = new ArrayList<>(curve.points());
        Collections.reverse(back);
        outline.addAll(corners(back, CurvePoint::p10));
        svg.empty("polygon", "class", "band", "points", String.join(" ", outline));
    }

    private void line() {
        svg.empty(
                "polyline",
                "class",
                "mean",
                "fill",
                "none",
                "points",
                String.join(" ", corners(curve.points(), CurvePoint::mean)));
    }

    private List<String> corners(List<CurvePoint> points, ToDoubleFunction<CurvePoint> score) {
        return points.stream()
                .map(p -> SvgText.number(days.at(p.date())) + "," + SvgText.number(scores.at(score.applyAsDouble(p))))
                .toList();
    }

    private void dateAxis() {
        double y = frame.plotBottom();
        svg.empty("line", "class", "axis", "x1", frame.left(), "x2", frame.plotRight(), "y1", y, "y2", y);
        for (LocalDate tick : days.ticks(frame.dateTicks())) {
            double x = days.at(tick);
            String words = curve.shortDate().apply(tick);
            double half = Words.width(words, frame.text()) / 2;
            svg.empty("line", "class", "axis", "x1", x, "x2", x, "y1", y, "y2", y + 6);
            svg.words(
                    "text",
                    words,
                    "x",
                    Math.min(x, frame.width() - half),
                    "y",
                    y + frame.text() * 1.35,
                    "text-anchor",
                    "middle");
        }
    }
}

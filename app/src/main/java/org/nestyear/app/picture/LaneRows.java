package org.nestyear.app.picture;

import java.util.ArrayList;
import java.util.List;

/** Lays out the lanes beneath the curve, each with its words where they fit: right of the mark, left of it, or below. */
final class LaneRows {
    private static final double GAP = 10;

    private final DateScale days;
    private final Frame frame;
    private final List<Row> rows;

    private LaneRows(DateScale days, Frame frame, List<Row> rows) {
        this.days = days;
        this.frame = frame;
        this.rows = rows;
    }

    static LaneRows of(List<Lane> lanes, DateScale days, Frame frame) {
        List<Row> rows = new ArrayList<>();
        double y = frame.plotBottom() + frame.line() * 1.9;
        for (Lane lane : lanes) {
            Row row = Row.of(lane, y, days, frame);
            rows.add(row);
            y += row.below ? frame.line() * 2 : frame.line();
        }
        return new LaneRows(days, frame, rows);
    }

    double height() {
        return rows.stream()
                        .mapToDouble(r -> r.below ? frame.line() * 2 : frame.line())
                        .sum()
                + frame.line() * 0.6;
    }

    void draw(SvgText svg) {
        for (Row row : rows) {
            svg.open("g", "class", "lane");
            mark(svg, row);
            svg.words("text", row.lane.words(), "x", row.wordsX, "y", row.wordsY, "text-anchor", row.anchor);
            svg.close();
        }
    }

    private void mark(SvgText svg, Row row) {
        double x = days.at(days.clamp(row.lane.at()));
        double y = row.y;
        double r = frame.text() * 0.42;
        switch (row.lane.mark()) {
            case BAR ->
                svg.empty(
                        "rect",
                        "class",
                        "bar",
                        "x",
                        row.left,
                        "y",
                        y - r,
                        "width",
                        row.right - row.left,
                        "height",
                        2 * r,
                        "fill",
                        "url(#" + frame.key() + "-bloom)");
            case BRACKET -> {
                span(svg, row);
                stop(svg, row.left, y, r);
                stop(svg, row.right, y, r);
            }
            case TRIANGLE -> {
                span(svg, row);
                corners(svg, x, y - r, x + r, y + r, x - r, y + r);
            }
            case DIAMOND -> {
                span(svg, row);
                corners(svg, x, y - r * 1.2, x + r * 1.2, y, x, y + r * 1.2, x - r * 1.2, y);
            }
            case RING -> {
                if (days.holds(row.lane.at())) {
                    svg.empty("line", "class", "day", "x1", x, "x2", x, "y1", frame.top(), "y2", frame.plotBottom());
                }
                svg.empty("circle", "class", "ring", "cx", x, "cy", y, "r", r);
            }
        }
    }

    private static void span(SvgText svg, Row row) {
        svg.empty("line", "class", "span", "x1", row.left, "x2", row.right, "y1", row.y, "y2", row.y);
    }

    private static void stop(SvgText svg, double x, double y, double r) {
        svg.empty("line", "class", "span", "x1", x, "x2", x, "y1", y - r, "y2", y + r);
    }

    private static void corners(SvgText svg, double... xy) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < xy.length; i += 2) {
            points.append(i == 0 ? "" : " ")
                    .append(SvgText.number(xy[i]))
                    .append(',')
                    .append(SvgText.number(xy[i + 1]));
        }
        svg.empty("polygon", "class", "mark", "points", points);
    }

    /** A lane with the place of its mark and words. */
    private record Row(
            Lane lane,
            double y,
            double left,
            double right,
            double wordsX,
            double wordsY,
            String anchor,
            boolean below) {
        static Row of(Lane lane, double y, DateScale days, Frame frame) {
            double size = frame.text() * 0.5;
            double left = days.leftEdge(days.clamp(lane.from()));
            double right = days.rightEdge(days.clamp(lane.to()));
            double at = days.at(days.clamp(lane.at()));
            double markLeft = Math.min(left, at - size);
            double markRight = Math.max(right, at + size);
            double room = Words.width(lane.words(), frame.text()) + GAP;
            double baseline = y + frame.text() * 0.35;
            if (markRight + room <= frame.width()) {
                return new Row(lane, y, left, right, markRight + GAP, baseline, "start", false);
            }
            if (markLeft - room >= 0) {
                return new Row(lane, y, left, right, markLeft - GAP, baseline, "end", false);
            }
            double start = Math.max(0, Math.min(markLeft, frame.width() - room));
            return new Row(lane, y, left, right, start, baseline + frame.line(), "start", true);
        }
    }
}

package org.nestyear.app.picture;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Says what line, band and hatching are, in a row that breaks where the picture is narrow. */
final class Legend {
    private static final double SWATCH = 34;
    private static final double GAP = 8;

    private final Frame frame;
    private final double top;

    Legend(Frame frame, double top) {
        this.frame = frame;
        this.top = top;
    }

    double height(ReleaseCurve curve) {
        return place(entries(curve), null) + frame.line();
    }

    void draw(SvgText svg, ReleaseCurve curve) {
        place(entries(curve), svg);
    }

    private static List<Entry> entries(ReleaseCurve curve) {
        return List.of(new Entry(Kind.LINE, curve.meanWords()), new Entry(Kind.BAND, curve.bandWords()));
    }

    // Draws when given a pen; either way tells how far the last row lies below the first.
    private double place(List<Entry> entries, @Nullable SvgText svg) {
        double x = 0;
        double row = 0;
        for (Entry entry : entries) {
            double width = SWATCH + GAP + Words.width(entry.words, frame.text());
            if (x > 0 && x + width > frame.width()) {
                x = 0;
                row += frame.line();
            }
            if (svg != null) {
                entry.draw(svg, x, top + row + frame.line() / 2, frame.text());
            }
            x += width + 3 * GAP;
        }
        return row;
    }

    private enum Kind {
        LINE,
        BAND
    }

    private record Entry(Kind kind, String words) {
        void draw(SvgText svg, double x, double y, double text) {
            if (kind == Kind.LINE) {
                svg.empty("line", "class", "mean", "x1", x, "x2", x + SWATCH, "y1", y, "y2", y);
            } else {
                double half = text * 0.45;
                svg.empty("rect", "class", "band", "x", x, "y", y - half, "width", SWATCH, "height", 2 * half);
            }
            svg.words("text", words, "x", x + SWATCH + GAP, "y", y + text * 0.35);
        }
    }
}

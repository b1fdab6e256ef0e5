package org.nestyear.app.web;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.release.CurvePoint;
import org.nestyear.core.release.ReleasePlan;
import org.nestyear.core.release.ReleaseWindow;

/** What a date the keeper typed would cost, read off the release curve. */
final class DateCost {
    private final PageWords words;

    DateCost(PageWords words) {
        this.words = words;
    }

    /** The typed date, if it is one. */
    static Optional<LocalDate> parse(String typed) {
        try {
            return Optional.of(LocalDate.parse(typed.strip()));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** One sentence, also for a text that is no date and for a date that was not tried. */
    String answer(ReleasePlan release, String typed) {
        Optional<LocalDate> date = parse(typed);
        if (date.isEmpty()) {
            return "“" + typed.strip() + "” is no date; expected year-month-day, such as "
                    + release.window().from() + ".";
        }
        List<CurvePoint> curve = release.curve();
        Optional<CurvePoint> point =
                curve.stream().filter(p -> p.date().equals(date.get())).findFirst();
        return point.map(found -> cost(release, found))
                .orElseGet(() -> words.day(date.get()) + " was not tried; the dates tried run from "
                        + words.span(
                                curve.get(0).date(), curve.get(curve.size() - 1).date()) + ".");
    }

    private String cost(ReleasePlan release, CurvePoint point) {
        String result = "it gives " + PageWords.percentSpan(point.p10(), point.p90())
                + " of what the best date gives in 8 cases of 10, and about " + PageWords.number(point.daughters(), 0)
                + " surviving daughters.";
        if (point.inWindow()) {
            return words.day(point.date()) + " lies in the window and loses " + PageWords.percent(point.cost())
                    + " on average; " + result;
        }
        ReleaseWindow open = release.notRuledOut();
        boolean ruledOut = point.date().isBefore(open.from()) || point.date().isAfter(open.to());
        return words.day(point.date()) + " loses " + PageWords.percent(point.cost()) + " on average"
                + (ruledOut ? "; " : ", though the weather years cannot rule it out; ") + result;
    }
}

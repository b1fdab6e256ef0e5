package org.nestyear.app.book;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.EitherBee;
import org.nestyear.app.service.PlanAnswer;
import org.nestyear.app.service.PlanRequest;
import org.nestyear.app.service.PlanService;
import org.nestyear.app.service.Refusal;
import org.nestyear.core.release.CurvePoint;
import org.nestyear.core.release.ReleasePlan;
import org.nestyear.core.release.Seen;
import org.nestyear.core.release.Sighting;
import org.nestyear.core.source.Parameter;
import org.nestyear.data.TextSource;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/**
 * A spring looked back on: what was forecast on the day the bees were put out, what happened, and what the same model says
 * now that the weather is known.
 *
 * @param site name of the site
 * @param species Latin name
 * @param year the spring
 * @param released day of the first release
 * @param lines what was to be seen, held against what was seen
 * @param hindsight what other days would have brought with the weather that came, or null where no plan can be made
 * @param own how far this keeper's springs were off the model, over all years written down
 * @param plugged tunnels plugged by the visits; −1 where none was counted
 * @param cells cells found when the nests were opened; −1 where none was opened
 * @param basis the numbers read
 */
public record SpringThatWas(
        String site,
        String species,
        int year,
        LocalDate released,
        List<Line> lines,
        @Nullable Hindsight hindsight,
        List<Offset> own,
        int plugged,
        int cells,
        List<Parameter> basis) {
    /** Longest look ahead of the sighting check, days; numerical. */
    private static final int LOOK_AHEAD = 74;

    private static final int LAST_OF_JUNE = 30;
    /** Days before the release from which other days are looked at; numerical. */
    private static final int BEFORE = 30;

    public SpringThatWas {
        lines = List.copyOf(lines);
        own = List.copyOf(own);
        basis = List.copyOf(basis);
    }

    /**
     * Something that was to be seen.
     *
     * @param what first bee, first female or first nesting
     * @param early forecast at the release: day by which it is seen in one case of ten, or null
     * @param middle and in half the cases, or null
     * @param late day from which not having seen it would be unusual, or null
     * @param happened the day it was written down, or null
     * @param weatherKnown the middle once the weather is known, or null
     */
    public record Line(
            String what,
            @Nullable LocalDate early,
            @Nullable LocalDate middle,
            @Nullable LocalDate late,
            @Nullable LocalDate happened,
            @Nullable LocalDate weatherKnown) {
        /** How it came: before, within or after the forecast; empty where something is not known. */
        public String verdict() {
            if (happened == null || early == null || late == null) {
                return "";
            }
            return happened.isBefore(early) ? "earlier" : happened.isAfter(late) ? "later" : "as forecast";
        }
    }

    /**
     * What other days would have brought.
     *
     * @param best the best day with the weather that came
     * @param cost share of the best that the day of the release lost, 0 to 1
     */
    public record Hindsight(LocalDate best, double cost) {}

    /**
     * How far the keeper's springs were off the model with their weather known.
     *
     * @param what the thing seen
     * @param meanDays days later than the middle, on average; below 0 is earlier
     * @param leastDays the earliest year
     * @param mostDays the latest
     * @param years how many springs stand behind it
     */
    public record Offset(String what, double meanDays, int leastDays, int mostDays, int years) {}

    /** What is looked at: its words, how it is written down, and what has been seen before it. */
    private enum Watched {
        FIRST_BEE("first bee", "first male", Seen.NOTHING),
        FIRST_FEMALE("first female", "first female", Seen.MALES),
        FIRST_NESTING("first nesting", "first nesting", Seen.FEMALES);

        private final String words;
        private final String kept;
        private final Seen before;

        Watched(String words, String kept, Seen before) {
            this.words = words;
            this.kept = kept;
            this.before = before;
        }
    }

    /**
     * Looks back on a spring of mason bees.
     *
     * @throws Refusal if no release is written down, or something a plan needs is missing
     */
    public static SpringThatWas of(RecordsDesk records, Path folder, String siteName, String species, int year) {
        if (EitherBee.isLeafcutter(EitherBee.named(species))) {
            throw Refusal.usage(
                    species + " is a leafcutter bee; expected a mason bee, since only their springs are forecast.",
                    "Maybe see nestyear warm.");
        }
        BookDesk desk = records.desk();
        KeptSeason season = KeptSeason.of(records, folder, siteName, species, year);
        LocalDate released = released(desk, season)
                .orElseThrow(() -> new Refusal(
                        Refusal.Kind.NO_ANSWER,
                        "NY-RECORDS-LACK",
                        season.site().text(Sheet.NAME),
                        "no release of " + season.species() + " in " + year + " is written down; expected one.",
                        "Maybe write it down with nestyear enter release."));
        List<Line> lines = new ArrayList<>();
        List<Parameter> basis = List.of();
        for (Watched watched : Watched.values()) {
            var forecast = PlanService.standard()
                    .sighting(season.asOf(released, false), released, released, released, watched.before);
            basis = forecast.basis();
            Sighting sighting = forecast.sighting();
            lines.add(new Line(
                    watched.words,
                    sighting.early(),
                    sighting.middle(),
                    sighting.unusual(),
                    happened(desk, season, watched, released),
                    weatherKnown(season, released, watched)));
        }
        return new SpringThatWas(
                season.site().text(Sheet.NAME),
                season.species(),
                year,
                released,
                lines,
                hindsight(season, released),
                own(records, folder, season),
                plugged(desk, season),
                cells(desk, season),
                basis);
    }

    private static Optional<LocalDate> released(BookDesk desk, KeptSeason season) {
        return desk
                .list(Search.of(Sheets.get("batch"))
                        .where("site", season.site().id())
                        .where("species", season.species())
                        .where("year", Integer.toString(season.year())))
                .stream()
                .flatMap(batch -> desk.list(Search.of(Sheets.get("release")).where("batch", batch.id())).stream())
                .map(release -> release.date("on_date").orElseThrow())
                .min(Comparator.naturalOrder());
    }

    private static @Nullable LocalDate happened(BookDesk desk, KeptSeason season, Watched watched, LocalDate released) {
        return desk
                .list(Search.of(Sheets.get("sighting"))
                        .where("site", season.site().id())
                        .where("species", season.species())
                        .where("what", watched.kept)
                        .between(released.toString(), season.year() + "-12-31"))
                .stream()
                .map(seen -> seen.date("on_date").orElseThrow())
                .min(Comparator.naturalOrder())
                .orElse(null);
    }

    private static @Nullable LocalDate weatherKnown(KeptSeason season, LocalDate released, Watched watched) {
        // A plan tries no later day, so none can be asked about.
        LocalDate last = LocalDate.of(season.year(), Month.JUNE, LAST_OF_JUNE);
        LocalDate ahead = released.plusDays(LOOK_AHEAD);
        LocalDate after = ahead.isAfter(last) ? last : ahead;
        try {
            return PlanService.standard()
                    .sighting(season.asOf(after, false), after, after, released, watched.before)
                    .sighting()
                    .middle();
        } catch (Refusal e) {
            // The weather table ends before the spring does, or the year has no other to go on with.
            return null;
        }
    }

    private static @Nullable Hindsight hindsight(KeptSeason season, LocalDate released) {
        LocalDate from = released.minusDays(BEFORE);
        TextSource known = season.asOf(from, true);
        try {
            PlanAnswer plan = PlanService.standard().plan(known, new PlanRequest(from, from, null));
            ReleasePlan release = plan.plan().release();
            for (CurvePoint point : release.curve()) {
                if (point.date().equals(released)) {
                    return new Hindsight(release.bestDate(), point.cost());
                }
            }
            return null;
        } catch (Refusal e) {
            return null;
        }
    }

    /** How far this keeper's springs at a site were off the model, over all years written down. */
    static List<Offset> own(RecordsDesk records, Path folder, KeptSeason season) {
        BookDesk desk = records.desk();
        List<Offset> offsets = new ArrayList<>();
        for (Watched watched : Watched.values()) {
            List<Integer> days = new ArrayList<>();
            for (int year : KeptSeason.yearsFlown(desk, season.site(), season.species())) {
                KeptSeason other =
                        KeptSeason.of(records, folder, season.site().text(Sheet.NAME), season.species(), year);
                LocalDate released = released(desk, other).orElseThrow();
                LocalDate seen = happened(desk, other, watched, released);
                LocalDate middle = seen == null ? null : weatherKnown(other, released, watched);
                if (seen != null && middle != null) {
                    days.add((int) ChronoUnit.DAYS.between(middle, seen));
                }
            }
            if (!days.isEmpty()) {
                offsets.add(new Offset(
                        watched.words,
                        days.stream().mapToInt(Integer::intValue).average().orElseThrow(),
                        days.stream().mapToInt(Integer::intValue).min().orElseThrow(),
                        days.stream().mapToInt(Integer::intValue).max().orElseThrow(),
                        days.size()));
            }
        }
        return offsets;
    }

    private static int plugged(BookDesk desk, KeptSeason season) {
        int sum = -1;
        for (Entry visit : desk.list(Search.of(Sheets.get("visit"))
                .where("site", season.site().id())
                .where("species", season.species())
                .between(season.year() + "-01-01", season.year() + "-12-31"))) {
            if (visit.whole("more_plugged").isPresent()) {
                sum = Math.max(0, sum) + visit.whole("more_plugged").orElse(0);
            }
        }
        return sum;
    }

    private static int cells(BookDesk desk, KeptSeason season) {
        int[] sum = {-1};
        for (Entry opening : desk.list(Search.of(Sheets.get("opening"))
                .where("site", season.site().id())
                .where("species", season.species())
                .where("year", Integer.toString(season.year())))) {
            desk.book()
                    .each(
                            desk.owner(),
                            Search.of(Sheets.get("tally")).where("opening", opening.id()),
                            tally -> sum[0] =
                                    Math.max(0, sum[0]) + tally.whole("cells").orElse(0));
        }
        return sum[0];
    }
}

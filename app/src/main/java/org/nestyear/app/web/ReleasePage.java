package org.nestyear.app.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nestyear.app.picture.Frame;
import org.nestyear.app.picture.Lane;
import org.nestyear.app.picture.ReleaseCurve;
import org.nestyear.app.picture.ReleasePicture;
import org.nestyear.app.service.OpenSeason;
import org.nestyear.app.service.PlanAnswer;
import org.nestyear.app.web.ReleaseView.Aim;
import org.nestyear.app.web.ReleaseView.HeldRow;
import org.nestyear.app.web.ReleaseView.MarkRow;
import org.nestyear.app.web.ReleaseView.PointRow;
import org.nestyear.app.web.ReleaseView.Shift;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.release.Alternative;
import org.nestyear.core.release.CurvePoint;
import org.nestyear.core.release.HoldBack;
import org.nestyear.core.release.Portion;
import org.nestyear.core.release.ReleasePlan;
import org.nestyear.core.release.ReleaseWindow;
import org.nestyear.core.release.Sensitivity;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.Plant;

/** Puts a plan into the words and the picture of the page Release. */
final class ReleasePage {
    /** Shares so near are the same after rounding to whole bees. */
    private static final double NEAR = 0.03;

    private static final double PERCENT = 100;

    private final PageWords words;

    private ReleasePage(PageWords words) {
        this.words = words;
    }

    /**
     * The page.
     *
     * @param typed the date the keeper typed to see its cost, as typed
     */
    static ReleaseView view(PageHead head, OpenSeason season, Optional<String> typed) {
        return new ReleasePage(PageWords.of(season.answer().plan())).page(head, season, typed);
    }

    private ReleaseView page(PageHead head, OpenSeason season, Optional<String> typed) {
        PlanAnswer answer = season.answer();
        Plan plan = answer.plan();
        ReleasePlan release = plan.release();
        List<CurvePoint> points = release.curve();
        ReleaseCurve curve = curve(answer);
        return new ReleaseView(
                head,
                words.season(season),
                words.headline(plan),
                words.portions(plan),
                PageWords.founded(plan),
                List.of(Goal.BOTH, Goal.BROOD, Goal.BLOOM).stream()
                        .map(goal -> aim(goal, release))
                        .toList(),
                points.get(0).date().toString(),
                points.get(points.size() - 1).date().toString(),
                typed.filter(text -> DateCost.parse(text).isPresent()).orElse(""),
                typed.map(text -> new DateCost(words).answer(release, text)).orElse(""),
                ReleasePicture.draw(curve, Frame.wide("release")),
                ReleasePicture.draw(curve, Frame.narrow("release")),
                marks(answer),
                points.stream().map(this::row).toList(),
                struck(plan),
                release.holdBack().stream().map(each -> held(each, release)).toList(),
                release.sensitivities().stream().map(this::shift).toList(),
                words.agreement(release),
                PageWords.basis(plan.basis()));
    }

    private Aim aim(Goal goal, ReleasePlan release) {
        ReleaseWindow window = release.windowsByGoal().get(goal);
        return new Aim(
                goal.word(),
                PageWords.aim(goal),
                window == null ? "no window" : words.window(window),
                PageWords.aimMeaning(goal),
                goal == release.goal());
    }

    private PointRow row(CurvePoint point) {
        return new PointRow(
                PageWords.shortDay(point.date()),
                PageWords.barePercent(point.mean()),
                PageWords.bareSpan(point.p10(), point.p90()),
                PageWords.number(point.daughters(), 0),
                PageWords.number(point.bloomDays(), 0),
                PageWords.barePercent(point.cost()),
                tag(point));
    }

    private static String tag(CurvePoint point) {
        if (!point.inWindow()) {
            return "";
        }
        return point.cost() == 0 ? "best" : "window";
    }

    private static String struck(Plan plan) {
        return plan.basis().stream()
                .filter(parameter -> parameter.id().equals("lot_lost_chance"))
                .findFirst()
                .map(parameter -> PageWords.percent(parameter.value()))
                .orElse("");
    }

    private static HeldRow held(HoldBack held, ReleasePlan release) {
        Portion first = release.releases().get(0);
        int all = release.releases().stream()
                .mapToInt(portion -> portion.females() + portion.males())
                .sum();
        double now = 1 - (double) (first.females() + first.males()) / all;
        boolean chosen = Math.abs(held.share() - now) < NEAR
                && (now < NEAR || release.releases().get(1).date().equals(held.second()));
        return new HeldRow(
                PageWords.percent(held.share()),
                chosen ? "the plan" : "",
                PageWords.barePercent(held.cost()),
                PageWords.barePercent(held.gainInBadYears()),
                PageWords.number(held.allLost() * PERCENT, 1),
                PageWords.barePercent(held.left()));
    }

    private Shift shift(Sensitivity sensitivity) {
        return new Shift(PageWords.sensitivity(sensitivity.id()), PageWords.daysMoved(sensitivity.days()));
    }

    private ReleaseCurve curve(PlanAnswer answer) {
        ReleasePlan release = answer.plan().release();
        ReleaseWindow window = release.window();
        return new ReleaseCurve(
                "Release curve",
                description(answer.plan()),
                "share of what the best date gives",
                release.curve(),
                window.from(),
                window.to(),
                "window " + PageWords.shortSpan(window.from(), window.to()),
                "mean over the weather years",
                "8 cases in 10",
                lanes(answer),
                PageWords::shortDay);
    }

    private String description(Plan plan) {
        ReleasePlan release = plan.release();
        List<CurvePoint> points = release.curve();
        return "For each date from " + words.day(points.get(0).date()) + " to "
                + words.day(points.get(points.size() - 1).date())
                + ", the result of putting the cocoons out on it. The release window is "
                + words.window(release.window()) + ". The tables beneath hold every value.";
    }

    private List<Lane> lanes(PlanAnswer answer) {
        ReleasePlan release = answer.plan().release();
        LocalDate today = answer.plan().today();
        List<Lane> lanes = new ArrayList<>();
        lanes.add(new Lane(Lane.Mark.RING, "today, " + PageWords.shortDay(today), today, today, today));
        ReleaseWindow open = release.notRuledOut();
        lanes.add(new Lane(
                Lane.Mark.BRACKET,
                "not ruled out, " + PageWords.shortSpan(open.from(), open.to()),
                open.from(),
                open.from(),
                open.to()));
        for (Plant plant : targets(answer)) {
            BloomSpan bloom = BloomSpan.of(plant, answer.plan().outlook());
            lanes.add(new Lane(
                    Lane.Mark.BAR,
                    plant.name() + " in bloom, " + PageWords.shortSpan(bloom.from(), bloom.to()),
                    bloom.from(),
                    bloom.middle(),
                    bloom.to()));
        }
        lanes.add(lane(Lane.Mark.TRIANGLE, "rule of thumb", release.ruleOfThumb()));
        lanes.add(lane(Lane.Mark.DIAMOND, "same date every year", release.fixedDate()));
        return lanes;
    }

    private Lane lane(Lane.Mark mark, String name, Alternative other) {
        return new Lane(
                mark, name + ", " + PageWords.shortDay(other.date()), other.earliest(), other.date(), other.latest());
    }

    private static List<Plant> targets(PlanAnswer answer) {
        return answer.inputs().plants().stream().filter(Plant::target).toList();
    }

    private static List<MarkRow> marks(PlanAnswer answer) {
        ReleasePlan release = answer.plan().release();
        ReleaseWindow window = release.window();
        ReleaseWindow open = release.notRuledOut();
        List<MarkRow> rows = new ArrayList<>();
        rows.add(new MarkRow("Today", PageWords.shortDay(answer.plan().today()), "", ""));
        rows.add(new MarkRow(
                "Release window",
                "",
                PageWords.shortSpan(window.from(), window.to()),
                "at most " + PageWords.percent(mostLost(release, window))));
        rows.add(new MarkRow(
                "Not ruled out by the weather years",
                "",
                PageWords.shortSpan(open.from(), open.to()),
                "at most " + PageWords.percent(mostLost(release, open))));
        for (Plant plant : targets(answer)) {
            BloomSpan bloom = BloomSpan.of(plant, answer.plan().outlook());
            rows.add(new MarkRow(
                    plant.name() + " in bloom, and its middle",
                    PageWords.shortDay(bloom.middle()),
                    PageWords.shortSpan(bloom.from(), bloom.to()),
                    ""));
        }
        rows.add(row("Rule of thumb", release.ruleOfThumb()));
        rows.add(row("Best date if it had to be the same every year", release.fixedDate()));
        return rows;
    }

    private static double mostLost(ReleasePlan release, ReleaseWindow span) {
        return release.curve().stream()
                .filter(point ->
                        !point.date().isBefore(span.from()) && !point.date().isAfter(span.to()))
                .mapToDouble(CurvePoint::cost)
                .max()
                .orElse(0);
    }

    private static MarkRow row(String name, Alternative other) {
        boolean oneDay = other.earliest().equals(other.latest());
        return new MarkRow(
                name,
                PageWords.shortDay(other.date()),
                oneDay ? "" : PageWords.shortSpan(other.earliest(), other.latest()),
                PageWords.percent(other.cost()));
    }
}

package org.nestyear.core.release;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.bloom.PastBloom;
import org.nestyear.core.forage.FlowerLine;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.stats.DrawnParameters;
import org.nestyear.core.stats.Quantiles;
import org.nestyear.core.weather.WeatherRecord;

/**
 * Computes when to put cocoons out: every candidate date is run through every weather member, the dates that cannot
 * be told from the best form the window, and the other ways to choose a date stand beside it with their costs. The
 * curve is model-derived and has not been tested in a release trial.
 */
public final class ReleasePlanner {
    /** Ends of the band shown about the curve; numerical. */
    private static final double TENTH = 0.1;
    /** The upper end of that band; numerical. */
    private static final double NINE_TENTHS = 0.9;
    /** Draws of the uncertain parameters; numerical. */
    private static final int DRAWS = 200;
    /** Members run under each draw; numerical. */
    private static final int MEMBERS_A_DRAW = 3;

    private final SeasonInputs inputs;
    private final ParameterTable table;
    private final ParameterReader parameters;
    private final ModelSettings settings;
    private final SeasonSetup setup;
    private final List<MemberModel> members;
    private final Outcomes outcomes;
    private final List<Outcomes> draws;
    private final @Nullable WholeBeeOdds odds;
    private final OutlookBuilder outlook;
    private final FlowerLine line;
    private final boolean fewYears;

    /**
     * Runs the model over every date and member.
     *
     * @param known the weather record up to today, its gaps filled
     * @param table the species' parameters, from whose ranges draws are made
     * @param parameters the same parameters, read through a log
     * @param inOrder works the draws out
     * @throws NoAnswerException if no honest answer is possible
     */
    public ReleasePlanner(
            SeasonInputs inputs,
            WeatherRecord known,
            ParameterTable table,
            ParameterReader parameters,
            InOrder inOrder) {
        this.inputs = inputs;
        this.table = table;
        this.parameters = parameters;
        settings = ModelSettings.of(parameters, inputs.nests());
        setup = new SeasonSetup(inputs, known, parameters, settings);
        members = setup.members(settings, 1);
        outcomes = Outcomes.of(members, setup.candidates());
        fewYears = setup.ensemble().realYears() < parameters.value("few_years");
        outlook = new OutlookBuilder(
                (int) parameters.value("cold_spell_days"), (int) parameters.value("cold_spell_within_days"));
        LocalDate best = setup.candidates().date(WindowFinder.best(outcomes.scores(inputs.goal())));
        members.forEach(member -> outlook.add(member, best));
        line = LineBuilder.of(members, setup.bloom(settings), inputs.plants().size());
        odds = WholeBees.isSmall(setup.stock().batch(), parameters) ? WholeBees.odds(members, best) : null;
        draws = draws(best, inOrder);
    }

    /** The outcomes under draws of the uncertain parameters; where years are few they widen the outlook as well. */
    private List<Outcomes> draws(LocalDate best, InOrder inOrder) {
        List<Draw> drawn = inOrder.map(DRAWS, draw -> draw(draw + 1));
        if (fewYears) {
            drawn.forEach(draw -> draw.members().forEach(member -> outlook.add(member, best)));
        }
        return drawn.stream().map(Draw::outcomes).toList();
    }

    private Draw draw(int number) {
        ModelSettings drawn = ModelSettings.of(new DrawnParameters(table, number), inputs.nests());
        List<MemberModel> some = setup.someMembers(drawn, MEMBERS_A_DRAW, number);
        return new Draw(some, Outcomes.of(some, setup.candidates()));
    }

    private record Draw(List<MemberModel> members, Outcomes outcomes) {}

    /** How the draws of the uncertain parameters agree with a window. */
    private Agreement agreement(Goal goal, ReleaseWindow window) {
        double[] bests = draws.stream()
                .mapToDouble(draw -> WindowFinder.best(draw.scores(goal)))
                .toArray();
        int inside = (int) Arrays.stream(bests)
                .mapToObj(i -> setup.candidates().date((int) i))
                .filter(date -> !date.isBefore(window.from()) && !date.isAfter(window.to()))
                .count();
        return new Agreement(
                draws.size(),
                inside,
                setup.candidates().date((int) Math.round(Quantiles.of(bests, TENTH))),
                setup.candidates().date((int) Math.round(Quantiles.of(bests, NINE_TENTHS))));
    }

    /** How many real years stand behind the answer. */
    public int realYears() {
        return setup.ensemble().realYears();
    }

    /** How many possible seasons were run: weather members times courses of bloom. */
    public int seasons() {
        return outcomes.seasons();
    }

    /** The plants with dates of past years, each with the model chosen for its bloom. */
    public List<PastBloom> pastBlooms() {
        return setup.pastBlooms().list();
    }

    /** What the bees want each day after a release on the best date, and how far each plant is in bloom. */
    public FlowerLine line() {
        return line;
    }

    /** True when the years are too few for paired differences alone. */
    public boolean fewYears() {
        return fewYears;
    }

    /** The plan of releases under the inputs' goal. */
    public ReleasePlan plan() {
        Goal goal = inputs.goal();
        double[][] scores = outcomes.scores(goal);
        int best = WindowFinder.best(scores);
        boolean[] open = notRuledOut(goal);
        boolean[] in = inWindow(open, goal);
        for (int i = 0; i < in.length; i++) {
            open[i] |= in[i];
        }
        Map<Goal, ReleaseWindow> windows = new EnumMap<>(Goal.class);
        for (Goal each : Goal.values()) {
            boolean[] own = each == goal ? in : inWindow(notRuledOut(each), each);
            windows.put(each, window(own, WindowFinder.best(outcomes.scores(each))));
        }
        SplitPlanner split = new SplitPlanner(members, setup.candidates(), outcomes, goal, parameters);
        SplitPlanner.Split chosen = split.choose(best);
        ReleaseWindow window = window(in, best);
        return new ReleasePlan(
                goal,
                curve(scores, in, best),
                window,
                window(open, best),
                windows,
                chosen.portions(),
                chosen.reason(),
                chosen.gain(),
                chosen.gainInBadYears(),
                split.dial(best, odds),
                split.bestPair(),
                agreement(goal, window),
                ruleOfThumb(scores),
                fixedDate(goal, scores),
                sensitivities(goal, best),
                outcomes.shareCapped(best),
                outlook.missedBloom(),
                odds);
    }

    /**
     * What to expect after a release on the best date.
     *
     * @throws NoAnswerException if in no season a female comes out
     */
    public Outlook outlook() {
        return outlook.build(odds);
    }

    /**
     * Dates that the weather years cannot tell from the best, and those so little behind it that it makes no difference:
     * many years may agree on which of two dates is better by next to nothing.
     */
    private boolean[] notRuledOut(Goal goal) {
        boolean[] close = fewYears
                ? WindowFinder.byRedrawing(outcomes, draws, goal, realYears())
                : WindowFinder.byYears(outcomes, goal);
        return WindowFinder.withSlight(close, outcomes.scores(goal), parameters.value("window_slight_cost"));
    }

    /** Of those, the dates that on average cost little, and never fewer than a keeper needs to choose from. */
    private boolean[] inWindow(boolean[] close, Goal goal) {
        double[][] scores = outcomes.scores(goal);
        return WindowFinder.worthwhile(
                close, scores, parameters.value("window_cost"), (int) parameters.value("window_least_days"));
    }

    private ReleaseWindow window(boolean[] in, int best) {
        int from = best;
        int to = best;
        while (from > 0 && in[from - 1]) {
            from--;
        }
        while (to < in.length - 1 && in[to + 1]) {
            to++;
        }
        Edge edge = best == 0 ? Edge.EARLIER : best == in.length - 1 ? Edge.LATER : Edge.NONE;
        return new ReleaseWindow(
                setup.candidates().date(from), setup.candidates().date(to), edge);
    }

    private List<CurvePoint> curve(double[][] scores, boolean[] in, int best) {
        List<double[][]> spread = new ArrayList<>();
        spread.add(scores);
        if (fewYears) {
            draws.forEach(draw -> spread.add(draw.scores(inputs.goal())));
        }
        double top = Outcomes.mean(scores, best);
        List<CurvePoint> curve = new ArrayList<>();
        for (int i = 0; i < in.length; i++) {
            double[] all = column(spread, i);
            double mean = Outcomes.mean(scores, i);
            curve.add(new CurvePoint(
                    setup.candidates().date(i),
                    mean,
                    Quantiles.of(all, TENTH),
                    Quantiles.of(all, NINE_TENTHS),
                    outcomes.meanDaughters(i),
                    outcomes.meanBloomDays(i),
                    top > 0 ? 1 - mean / top : 0,
                    in[i]));
        }
        return curve;
    }

    private static double[] column(List<double[][]> tables, int i) {
        return tables.stream()
                .flatMap(Arrays::stream)
                .mapToDouble(row -> row[i])
                .toArray();
    }

    private Alternative ruleOfThumb(double[][] scores) {
        WarmRule rule = WarmRule.of(parameters);
        double[] index = new double[scores.length];
        double cost = 0;
        int row = 0;
        double top = Outcomes.mean(scores, WindowFinder.best(scores));
        for (MemberModel member : members) {
            for (int k = 0; k < member.courses(); k++) {
                int yes = rule.firstYes(member, k, setup.candidates());
                index[row] = yes;
                cost += top - scores[row][yes];
                row++;
            }
        }
        return alternative(index, top > 0 ? cost / scores.length / top : 0);
    }

    private Alternative alternative(double[] index, double cost) {
        Candidates dates = setup.candidates();
        return new Alternative(
                dates.date((int) Math.round(Quantiles.of(index, 0.5))),
                dates.date((int) Math.round(Quantiles.of(index, 0))),
                dates.date((int) Math.round(Quantiles.of(index, 1))),
                cost);
    }

    private Alternative fixedDate(Goal goal, double[][] scores) {
        List<MemberModel> past = setup.pastMembers(settings);
        Candidates all = past.isEmpty() ? setup.candidates() : setup.allDates(parameters);
        int fixed = past.isEmpty()
                ? WindowFinder.best(scores)
                : setup.candidates()
                        .nearest(all.date(
                                WindowFinder.best(Outcomes.of(past, all).scores(goal))));
        double top = Outcomes.mean(scores, WindowFinder.best(scores));
        double cost = top > 0 ? 1 - Outcomes.mean(scores, fixed) / top : 0;
        return alternative(new double[] {fixed}, cost);
    }

    private List<Sensitivity> sensitivities(Goal goal, int best) {
        ParameterReader blind =
                id -> id.equals("settling_food_weight") ? table.get(id).low() : table.value(id);
        ParameterReader bound =
                id -> id.equals("settling_food_weight") ? table.get(id).high() : table.value(id);
        return List.of(
                moved("poorer-neighbourhood", setup.members(settings, 0.5), goal, best),
                moved("richer-neighbourhood", setup.members(settings, 1 + 0.5), goal, best),
                moved("food-blind-settling", setup.members(ModelSettings.of(blind, inputs.nests()), 1), goal, best),
                moved("food-bound-settling", setup.members(ModelSettings.of(bound, inputs.nests()), 1), goal, best));
    }

    private Sensitivity moved(String id, List<MemberModel> changed, Goal goal, int best) {
        Outcomes other = Outcomes.of(changed, setup.candidates());
        return new Sensitivity(id, WindowFinder.best(other.scores(goal)) - best);
    }
}

package org.nestyear.core.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.brood.BroodOutlook;
import org.nestyear.core.forage.Flora;
import org.nestyear.core.forage.Forage;
import org.nestyear.core.release.InOrder;
import org.nestyear.core.release.NoAnswerException;
import org.nestyear.core.release.Outlook;
import org.nestyear.core.release.Portion;
import org.nestyear.core.release.ReleasePlan;
import org.nestyear.core.release.ReleasePlanner;
import org.nestyear.core.release.ReleaseWindow;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.Species;
import org.nestyear.core.weather.FilledWeather;
import org.nestyear.core.weather.Filling;
import org.nestyear.core.weather.Gap;
import org.nestyear.core.weather.GapFilling;
import org.nestyear.core.weather.WeatherRecord;

/** The way from inputs to a plan; read it top to bottom. It reads no file, no clock and no weather after today. */
public final class Planner {
    private Planner() {}

    /**
     * Makes the plan of a season.
     *
     * @throws IllegalArgumentException if the inputs cannot be planned together, with the reason
     * @throws NoAnswerException if no honest answer is possible, with the reason
     */
    public static Plan plan(SeasonInputs inputs, Species species) {
        return plan(inputs, species, null, InOrder.ONE_BY_ONE);
    }

    /**
     * Makes the same plan.
     *
     * @param flora the plant list, or null for a plan that does not hold flowers against cells
     * @param inOrder works out what may be done side by side
     * @throws IllegalArgumentException if the inputs cannot be planned together, with the reason
     * @throws NoAnswerException if no honest answer is possible, with the reason
     */
    public static Plan plan(SeasonInputs inputs, Species species, @Nullable Flora flora, InOrder inOrder) {
        PresentRange.require(species, inputs.site());
        SeasonInputs merged = inputs.withBatches(List.of(Batch.together(inputs.batches())));
        FilledWeather known = GapFilling.fill(knownWeather(merged));
        ReadLog read = new ReadLog(species.parameters());
        ReleasePlanner planner = new ReleasePlanner(merged, known.weather(), species.parameters(), read, inOrder);
        ReleasePlan release = planner.plan();
        Outlook outlook = planner.outlook();
        BroodOutlook brood = BroodOutlook.of(
                        outlook.lastNesting().late(),
                        known.weather(),
                        inputs.site().latitudeDeg(),
                        read)
                .orElse(null);
        Forage forage = flora == null ? null : Forage.of(inputs.plants(), inputs.site(), flora, false, planner.line());
        Situation situation = new Situation(
                merged,
                species,
                release,
                outlook,
                planner.pastBlooms(),
                brood,
                forage,
                planner.realYears(),
                gaps(known));
        List<Job> jobs = Rules.jobs().stream()
                .flatMap(rule -> rule.find(situation).stream())
                .sorted(Comparator.comparing(Job::from).thenComparing(Job::to))
                .toList();
        List<Finding> findings = Rules.findings().stream()
                .flatMap(rule -> rule.find(situation).stream())
                .sorted(Comparator.comparing(Finding::level).reversed())
                .toList();
        return new Plan(
                headline(situation),
                species,
                inputs.today(),
                release,
                situation.outlook(),
                situation.pastBlooms(),
                brood,
                forage,
                jobs,
                findings,
                planner.realYears(),
                planner.seasons(),
                basis(read.read(), jobs, findings));
    }

    private static WeatherRecord knownWeather(SeasonInputs inputs) {
        return inputs.weather()
                .upTo(inputs.today())
                .orElseThrow(() -> new NoAnswerException(
                        "NY-PLAN-NO-WEATHER",
                        "The weather file begins after " + inputs.today()
                                + ", the day of the plan, so nothing is known of the season yet."));
    }

    private static List<Gap> gaps(FilledWeather known) {
        return known.fillings().stream().map(Filling::gap).toList();
    }

    private static Phrase headline(Situation s) {
        ReleaseWindow window = s.release().window();
        Portion first = s.first();
        Phrase bees = cocoons(first);
        if (s.batch().wintered() == Wintered.UNOPENED) {
            return Phrase.of(
                    "Set the full nests out by {}: the first males may be flying on {}.",
                    window.to(),
                    s.outlook().firstMales().early());
        }
        if (s.choosesItself()) {
            return Phrase.of("Have your {} at the nests by {}; they choose their own day.", bees, window.to());
        }
        if (s.isOpen() && !s.isNow()) {
            return Phrase.of(
                    "Put {} out between now and {}, best about {}{}.",
                    bees,
                    window.to(),
                    s.release().bestDate(),
                    kept(s));
        }
        if (s.isOpen()) {
            LocalDate by = window.to();
            return by.isAfter(s.today())
                    ? Phrase.of("Put {} out now, and not later than {}{}.", bees, by, kept(s))
                    : Phrase.of("Put {} out today{}.", bees, kept(s));
        }
        return Phrase.of("Put {} out between {} and {}{}.", bees, window.from(), window.to(), kept(s));
    }

    private static Phrase cocoons(Portion portion) {
        if (portion.males() == 0 || portion.females() == 0) {
            return Phrase.of(
                    portion.males() == 0 ? "{} female cocoons" : "{} male cocoons",
                    Quantity.count((double) portion.females() + portion.males()));
        }
        return Phrase.of(
                "{} female and {} male cocoons", Quantity.count(portion.females()), Quantity.count(portion.males()));
    }

    private static Object kept(Situation s) {
        if (s.release().releases().size() < 2) {
            return "";
        }
        Portion second = s.release().releases().get(1);
        return second.males() == 0
                ? Phrase.of(", and keep {} females cold for a second lot", Quantity.count(second.females()))
                : Phrase.of(
                        ", and keep {} females and {} males cold for a second lot",
                        Quantity.count(second.females()),
                        Quantity.count(second.males()));
    }

    private static List<Parameter> basis(List<Parameter> model, List<Job> jobs, List<Finding> findings) {
        Map<String, Parameter> all = new LinkedHashMap<>();
        model.forEach(p -> all.put(p.id(), p));
        jobs.forEach(job -> job.basis().forEach(p -> all.put(p.id(), p)));
        findings.forEach(finding -> finding.basis().forEach(p -> all.put(p.id(), p)));
        return new ArrayList<>(all.values());
    }
}

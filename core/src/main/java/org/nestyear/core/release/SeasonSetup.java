package org.nestyear.core.release;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.nestyear.core.bloom.BloomForecast;
import org.nestyear.core.bloom.PastBlooms;
import org.nestyear.core.flight.SkyHours;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.SeasonFrame;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.season.WeatherEnsemble;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.stats.Quantiles;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;

/** What is fixed before any date is tried: the season, its possible weather, the stock and the dates to try. */
final class SeasonSetup {
    private static final double HALF = 0.5;

    private final SeasonInputs inputs;
    private final SeasonFrame frame;
    private final WeatherEnsemble ensemble;
    private final WeatherEnsemble pastYears;
    private final Stock stock;
    private final PastBlooms pastBlooms;
    private final Candidates candidates;
    private final SkyHours sky;
    private final List<double[]> hourly;
    /** Numbers of the members, earliest bloom first. */
    private final List<Integer> byBloom;

    /**
     * Sets a season up.
     *
     * @param known the weather record up to today, its gaps filled
     * @throws NoAnswerException if no past year covers the rest of the season, or the season is over
     */
    SeasonSetup(SeasonInputs inputs, WeatherRecord known, ParameterReader parameters, ModelSettings settings) {
        this.inputs = inputs;
        frame = SeasonFrame.planningFrom(inputs.today());
        Batch batch = inputs.batches().get(0);
        LocalDate coldStart = frame.ofDayOfYear(parameters.value("cold_start_day"));
        LocalDate from = batch.wintered() == Wintered.FRIDGE ? LocalDate.of(frame.year(), 1, 1) : coldStart;
        WeatherEnsemble years = WeatherEnsemble.continuing(frame, known, inputs.forecast(), inputs.today(), from);
        ensemble = years.realYears() < parameters.value("few_years")
                ? years.enlarged(
                        (int) parameters.value("members_least"), known, inputs.forecast(), inputs.today(), from)
                : years;
        pastYears = WeatherEnsemble.wholeYears(frame, known, from);
        if (ensemble.members().isEmpty()) {
            throw new NoAnswerException(
                    "NY-PLAN-NO-YEARS",
                    "The weather record holds no past year that runs from "
                            + (inputs.today().isAfter(from) ? inputs.today().plusDays(1) : from)
                                    .toString()
                                    .substring("yyyy-".length())
                            + " to 08-31 without a gap, so nothing can be said about the days to come; add at least"
                            + " one such year.");
        }
        stock = new Stock(batch, inputs.today(), coldStart);
        SeasonWeather first = ensemble.members().get(0);
        sky = SkyHours.of(first.date(0), first.days(), inputs.site().latitudeDeg());
        hourly = hourly(ensemble);
        pastBlooms = PastBlooms.of(
                inputs.plants(),
                inputs.weather().upTo(inputs.today()).orElse(known),
                known,
                inputs.site().latitudeDeg(),
                ensemble.members(),
                parameters);
        BloomForecast bloom = bloom(settings);
        candidates = candidates(parameters, bloom);
        byBloom = IntStream.range(0, ensemble.members().size())
                .boxed()
                .sorted(Comparator.comparingDouble(
                        m -> bloom.targetMiddle(ensemble.members().get(m))))
                .toList();
    }

    private Candidates candidates(ParameterReader parameters, BloomForecast bloom) {
        LocalDate earliest = frame.ofDayOfYear(parameters.value("first_release_day"));
        LocalDate first = inputs.today().isAfter(earliest) ? inputs.today() : earliest;
        double after = parameters.value("after_bloom_days");
        SeasonWeather any = ensemble.members().get(0);
        double bloomEnd = Quantiles.of(
                ensemble.members().stream().mapToDouble(bloom::targetLast).toArray(), HALF);
        LocalDate last = any.date((int) Math.round(bloomEnd + after));
        LocalDate least = first.plusDays(Math.round(after));
        LocalDate seasonEnd = frame.ofDayOfYear(parameters.value("community_end_day"));
        if (first.isAfter(seasonEnd)) {
            throw new NoAnswerException(
                    "NY-PLAN-SEASON-OVER",
                    "On " + inputs.today() + " the season of these bees is over (no date after " + seasonEnd
                            + " is tried); keep them for no longer than their kind allows and plan the next season.");
        }
        return new Candidates(first, last.isBefore(least) ? least : last);
    }

    private List<double[]> hourly(WeatherEnsemble of) {
        List<double[]> all = new ArrayList<>();
        for (SeasonWeather member : of.members()) {
            all.add(HourlyTemperatures.fromDailyRange(
                    member.date(0), member.minC(), member.maxC(), inputs.site().latitudeDeg()));
        }
        return all;
    }

    BloomForecast bloom(ModelSettings settings) {
        return new BloomForecast(
                inputs.plants(), inputs.community(), settings.bloom(), ensemble.members(), inputs.today(), pastBlooms);
    }

    PastBlooms pastBlooms() {
        return pastBlooms;
    }

    /** This season's members under the given settings, other bloom at {@code communityFactor} times its level. */
    List<MemberModel> members(ModelSettings settings, double communityFactor) {
        return models(ensemble, hourly, settings, communityFactor);
    }

    /**
     * Some of this season's members, from the earliest bloom to the latest at even steps, under other settings; each runs
     * one course of its bloom, another at each turn.
     */
    List<MemberModel> someMembers(ModelSettings settings, int most, int turn) {
        BloomForecast asTold = bloom(settings);
        int wanted = Math.min(most, byBloom.size());
        List<MemberModel> some = new ArrayList<>();
        for (int i = 0; i < wanted; i++) {
            int m = byBloom.get((2 * i + 1) * byBloom.size() / (2 * wanted));
            some.add(new MemberModel(
                    ensemble.members().get(m), hourly.get(m), sky, asTold, stock, settings, 1, turn + i));
        }
        return some;
    }

    /** The past years on their own, as a fixed calendar date would have met them. */
    List<MemberModel> pastMembers(ModelSettings settings) {
        return models(pastYears, hourly(pastYears), settings, 1);
    }

    private List<MemberModel> models(
            WeatherEnsemble of, List<double[]> hours, ModelSettings settings, double communityFactor) {
        BloomForecast bloom = bloom(settings);
        List<MemberModel> models = new ArrayList<>();
        for (int m = 0; m < of.members().size(); m++) {
            models.add(new MemberModel(
                    of.members().get(m),
                    hours.get(m),
                    sky,
                    bloom,
                    stock,
                    settings,
                    communityFactor,
                    MemberModel.ALL_COURSES));
        }
        return models;
    }

    SeasonFrame frame() {
        return frame;
    }

    WeatherEnsemble ensemble() {
        return ensemble;
    }

    Stock stock() {
        return stock;
    }

    Candidates candidates() {
        return candidates;
    }

    /** All dates that could have been tried from the start of the season, for rules that know nothing of today. */
    Candidates allDates(ParameterReader parameters) {
        return new Candidates(frame.ofDayOfYear(parameters.value("first_release_day")), candidates.last());
    }
}

package org.nestyear.core.release;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.nestyear.core.bloom.BloomForecast;
import org.nestyear.core.emergence.EmergenceClock;
import org.nestyear.core.flight.SkyHours;
import org.nestyear.core.release.HindcastYear.Chosen;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonFrame;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.species.Sex;
import org.nestyear.core.stats.Quantiles;
import org.nestyear.core.stats.RankedProbability;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.HourlyTemperatures;
import org.nestyear.core.weather.WeatherRecord;

/**
 * Decides every spring of a long record again, each with only what was then known (the other years stand for what
 * could come), and says what each way of deciding lost against the best date in hindsight. The loss is the model's
 * own: no release trial stands behind it.
 */
public final class Hindcast {
    /** Lower end of a band; numerical. */
    private static final double TENTH = 0.1;

    private static final double HALF = 0.5;
    /** Upper end of a band; numerical. */
    private static final double NINE_TENTHS = 0.9;
    /** Days between questions when the advice rolls; numerical. */
    private static final int ASK_EVERY = 2;
    /** Days of the stand-in for a forecast, and how fast today's anomaly fades in it; numerical. */
    private static final int FORECAST_DAYS = 7;
    /** Share of an anomaly left a day later, the lag-1 correlation of daily temperature; numerical. */
    private static final double PERSISTENCE = 0.6;

    private static final int FORTNIGHT = 2 * FORECAST_DAYS;

    private final SeasonInputs template;
    private final WeatherRecord record;
    private final Map<Integer, LocalDate> bloomByYear;
    private final ParameterReader parameters;
    private final ModelSettings settings;
    private final ModelSettings truth;
    private final Map<Integer, SeasonWeather> seasons = new TreeMap<>();

    /**
     * Prepares a hindcast.
     *
     * @param template site, batch, nests, target plant and aim; its batch counts its chill on the day of decision
     * @param record the long record, without gaps
     * @param bloomByYear observed middle of bloom by year
     * @param parameters what the planner believes
     * @param world what the world does; the same as {@code parameters} unless a wrong belief is to be tried
     */
    public Hindcast(
            SeasonInputs template,
            WeatherRecord record,
            Map<Integer, LocalDate> bloomByYear,
            ParameterReader parameters,
            ParameterReader world) {
        this.template = template;
        this.record = record;
        this.bloomByYear = new TreeMap<>(bloomByYear);
        this.parameters = parameters;
        settings = ModelSettings.of(parameters, template.nests());
        truth = ModelSettings.of(world, template.nests());
        for (int year : this.bloomByYear.keySet()) {
            SeasonFrame frame = SeasonFrame.ofYear(year);
            SeasonWeather.assemble(frame, year, LocalDate.of(year, Month.JANUARY, 1), record::find)
                    .ifPresent(season -> seasons.put(year, season));
        }
    }

    /**
     * Every spring of the record.
     *
     * @param decide day and month of the one decision, for instance 1 March
     */
    public List<HindcastYear> run(MonthDay decide) {
        Map<Integer, double[]> truths = new TreeMap<>();
        for (Map.Entry<Integer, SeasonWeather> entry : seasons.entrySet()) {
            truths.put(entry.getKey(), truthCurve(entry.getKey(), entry.getValue()));
        }
        List<HindcastYear> years = new ArrayList<>();
        for (int year : seasons.keySet()) {
            years.add(year(year, decide, truths));
        }
        return years;
    }

    private HindcastYear year(int year, MonthDay decide, Map<Integer, double[]> truths) {
        Candidates all = candidates(year);
        double[] curve = required(truths, year);
        int best = argmax(curve);
        LocalDate today = decide.atYear(year);
        List<MemberModel> members = members(year, today, false);
        Candidates open = new Candidates(today, all.last());
        Outcomes outcomes = Outcomes.of(members, open);
        LocalDate planned = open.date(WindowFinder.best(outcomes.scores(template.goal())));
        double[] blooms = members.stream()
                .flatMapToDouble(m -> IntStream.range(0, m.courses())
                        .mapToDouble(k -> m.food(k).targetMiddle()))
                .map(index -> index + 1)
                .toArray();
        double[] climate = bloomByYear.entrySet().stream()
                .filter(e -> e.getKey() != year)
                .mapToDouble(e -> e.getValue().getDayOfYear())
                .toArray();
        LocalDate bloom = required(bloomByYear, year);
        double[] females =
                members.stream().mapToDouble(m -> halfOut(m, planned)).toArray();
        SeasonWeather season = required(seasons, year);
        MemberModel world = truthMember(year, season);
        return new HindcastYear(
                year,
                all.date(best),
                chosen(planned, all, curve),
                chosen(rolling(year, all), all, curve),
                chosen(all.date(WarmRule.of(parameters).firstYes(world, 0, all)), all, curve),
                chosen(all.date(fixed(year, truths)), all, curve),
                bloom,
                Quantiles.of(blooms, TENTH),
                Quantiles.of(blooms, NINE_TENTHS),
                RankedProbability.score(blooms, bloom.getDayOfYear()),
                RankedProbability.score(climate, bloom.getDayOfYear()),
                halfOut(world, planned),
                Quantiles.of(females, TENTH),
                Quantiles.of(females, NINE_TENTHS),
                fortnightCost(curve, best));
    }

    /** Asks every two days with the weather to date and a stand-in for the forecast, until the answer is "now". */
    private LocalDate rolling(int year, Candidates all) {
        for (int i = 0; i < all.count(); i += ASK_EVERY) {
            LocalDate today = all.date(i);
            Candidates open = new Candidates(today, all.last());
            Outcomes outcomes = Outcomes.of(members(year, today, true), open);
            if (WindowFinder.best(outcomes.scores(template.goal())) < ASK_EVERY) {
                return today;
            }
        }
        return all.last();
    }

    private int fixed(int year, Map<Integer, double[]> truths) {
        double[] sum = new double[candidates(year).count()];
        truths.forEach((other, curve) -> {
            for (int i = 0; other != year && i < sum.length; i++) {
                sum[i] += curve[Math.min(i, curve.length - 1)];
            }
        });
        return argmax(sum);
    }

    private static Chosen chosen(LocalDate date, Candidates all, double[] curve) {
        double top = curve[argmax(curve)];
        return new Chosen(date, top > 0 ? 1 - curve[all.nearest(date)] / top : 0);
    }

    private static double fortnightCost(double[] curve, int best) {
        double top = curve[best];
        double before = curve[Math.max(0, best - FORTNIGHT)];
        double after = curve[Math.min(curve.length - 1, best + FORTNIGHT)];
        return top > 0 ? 1 - (before + after) / 2 / top : 0;
    }

    private double[] truthCurve(int year, SeasonWeather season) {
        Candidates all = candidates(year);
        Outcomes outcomes = Outcomes.of(List.of(truthMember(year, season)), all);
        return outcomes.scores(template.goal())[0];
    }

    private MemberModel truthMember(int year, SeasonWeather season) {
        LocalDate middle = required(bloomByYear, year);
        long half = Math.round(truth.bloom().sdDays() * truth.bloom().spanSds() / 2);
        List<Plant> observed = template.plants().stream()
                .map(p -> new Plant(
                        p.name(),
                        p.coverM2(),
                        p.target(),
                        new BloomDates.Dated(middle.minusDays(half), middle.plusDays(half))))
                .toList();
        BloomForecast bloom = new BloomForecast(
                observed,
                template.community(),
                truth.bloom(),
                List.of(season),
                season.frame().end());
        return model(season, bloom, truth);
    }

    private List<MemberModel> members(int year, LocalDate today, boolean forecast) {
        SeasonFrame frame = SeasonFrame.ofYear(year);
        List<SeasonWeather> ensemble = new ArrayList<>();
        for (int other : seasons.keySet()) {
            if (other != year) {
                SeasonWeather.assemble(
                                frame,
                                other,
                                LocalDate.of(year, Month.JANUARY, 1),
                                date -> possible(frame, other, date, today, forecast))
                        .ifPresent(ensemble::add);
            }
        }
        BloomForecast bloom =
                new BloomForecast(template.plants(), template.community(), settings.bloom(), ensemble, today);
        return ensemble.stream().map(season -> model(season, bloom, settings)).toList();
    }

    /** What a day may bring: what was measured, or another year's day moved by the fading anomaly of today. */
    private Optional<DailyWeather> possible(
            SeasonFrame frame, int other, LocalDate date, LocalDate today, boolean forecast) {
        if (!date.isAfter(today)) {
            return record.find(date);
        }
        Optional<DailyWeather> there = record.find(frame.sameDayIn(other, date));
        int ahead = (int) (date.toEpochDay() - today.toEpochDay());
        Optional<DailyWeather> now = record.find(today);
        Optional<DailyWeather> then = record.find(frame.sameDayIn(other, today));
        if (!forecast || ahead > FORECAST_DAYS || there.isEmpty() || now.isEmpty() || then.isEmpty()) {
            return there;
        }
        double part = Math.pow(PERSISTENCE, ahead);
        DailyWeather d = there.get();
        double min = d.minC() + part * (now.get().minC() - then.get().minC());
        double max = d.maxC() + part * (now.get().maxC() - then.get().maxC());
        return Optional.of(new DailyWeather(
                date, Math.min(min, max), Math.max(min, max), d.rainMm(), d.windMs(), d.radiationMjM2()));
    }

    private MemberModel model(SeasonWeather season, BloomForecast bloom, ModelSettings under) {
        double latitude = template.site().latitudeDeg();
        double[] hourly = HourlyTemperatures.fromDailyRange(season.date(0), season.minC(), season.maxC(), latitude);
        return new MemberModel(
                season,
                hourly,
                SkyHours.of(season.date(0), season.days(), latitude),
                bloom,
                stock(season.frame()),
                under,
                1,
                MemberModel.ALL_COURSES);
    }

    private static double halfOut(MemberModel member, LocalDate release) {
        double[] out = Arrays.stream(member.times(Sex.FEMALE, member.weather().index(release)))
                .filter(t -> t != EmergenceClock.IN_STORE && t != EmergenceClock.NOT_YET)
                .toArray();
        return out.length == 0 ? member.weather().days() : Math.floor(Quantiles.of(out, HALF)) + 1;
    }

    private Stock stock(SeasonFrame frame) {
        return new Stock(
                template.batches().get(0),
                template.today().withYear(frame.year()),
                frame.ofDayOfYear(parameters.value("cold_start_day")));
    }

    private Candidates candidates(int year) {
        SeasonFrame frame = SeasonFrame.ofYear(year);
        return new Candidates(
                frame.ofDayOfYear(parameters.value("first_release_day")),
                frame.ofDayOfYear(parameters.value("last_hindcast_day")));
    }

    private static int argmax(double[] values) {
        int best = 0;
        for (int i = 1; i < values.length; i++) {
            best = values[i] > values[best] ? i : best;
        }
        return best;
    }

    private static <T> T required(Map<Integer, T> map, int year) {
        T value = map.get(year);
        if (value == null) {
            throw new IllegalStateException("the hindcast has nothing for " + year);
        }
        return value;
    }

    /** The aim that regrets are counted in. */
    public Goal goal() {
        return template.goal();
    }
}

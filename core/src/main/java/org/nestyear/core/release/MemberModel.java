package org.nestyear.core.release;

import org.nestyear.core.bloom.BloomForecast;
import org.nestyear.core.bloom.FoodCurve;
import org.nestyear.core.emergence.EmergenceClock;
import org.nestyear.core.emergence.ThermalSums;
import org.nestyear.core.flight.FlightDays;
import org.nestyear.core.flight.SkyHours;
import org.nestyear.core.nesting.FemaleValue;
import org.nestyear.core.nesting.Mating;
import org.nestyear.core.nesting.NestingResult;
import org.nestyear.core.nesting.NestingRun;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.species.Sex;
import org.nestyear.core.winter.ColdRecord;

/**
 * One weather member under one set of settings: everything that does not depend on the date of release is worked out
 * once; a release is then a weighted sum over the days on which its bees come out. Its bloom comes early, on time or
 * late by equal chance when the date is a forecast. Not for several threads at once.
 */
final class MemberModel {
    /** Bees along each axis of the emergence grid; numerical. */
    private static final int GRID = 11;
    /** Three equally likely errors with mean 0 and variance 1; numerical. */
    private static final double[] ERRORS = {-Math.sqrt(1.5), 0, Math.sqrt(1.5)};

    private static final double[] NO_ERROR = {0};

    private final SeasonWeather weather;
    private final ModelSettings settings;
    private final ThermalSums femaleSums;
    private final ThermalSums maleSums;
    private final EmergenceClock femaleClock;
    private final EmergenceClock maleClock;
    private final FoodCurve[] foods;
    private final double[] bloomEnds;
    private final FemaleValue[] values;
    private final double[] females;
    private final double[] males;
    private final double[] mated;
    private final FlightDays flight;
    private final int[] coldDays;

    /**
     * Prepares a member.
     *
     * @param hourlyC hourly air temperature over the member's days, °C
     * @param communityFactor factor on the level of other bloom, 1 as told
     */
    MemberModel(
            SeasonWeather weather,
            double[] hourlyC,
            SkyHours sky,
            BloomForecast bloom,
            ModelSettings settings,
            double communityFactor) {
        this.weather = weather;
        this.settings = settings;
        double[] cocoonC = hourlyC;
        if (settings.boxExcessC() != 0) {
            cocoonC = hourlyC.clone();
            for (int h = 0; h < cocoonC.length; h++) {
                cocoonC[h] += settings.boxExcessC();
            }
        }
        femaleSums = ThermalSums.ofHours(settings.female(), cocoonC);
        maleSums = femaleSums.ofOtherSex(settings.female(), settings.male(), cocoonC);
        femaleClock = new EmergenceClock(settings.female(), GRID);
        maleClock = new EmergenceClock(settings.male(), GRID);
        flight = FlightDays.of(settings.flight(), weather, hourlyC, sky);
        double[] errors = bloom.errorDays() > 0 ? ERRORS : NO_ERROR;
        foods = new FoodCurve[errors.length];
        values = new FemaleValue[errors.length];
        bloomEnds = new double[errors.length];
        for (int k = 0; k < errors.length; k++) {
            foods[k] = bloom.curve(weather, errors[k] * bloom.errorDays(), communityFactor);
            bloomEnds[k] = bloom.targetLast(weather) + errors[k] * bloom.errorDays();
            values[k] = new FemaleValue(settings.nesting(), settings.tunnels(), flight, foods[k]);
        }
        coldDays = coldDays(weather, settings.chillLimitC());
        females = new double[weather.days()];
        males = new double[weather.days()];
        mated = new double[weather.days()];
    }

    /** Days colder than the limit before each day. */
    private static int[] coldDays(SeasonWeather weather, double limitC) {
        int[] before = new int[weather.days() + 1];
        for (int d = 0; d < weather.days(); d++) {
            boolean cold = (weather.minC()[d] + weather.maxC()[d]) / 2 < limitC;
            before[d + 1] = before[d] + (cold ? 1 : 0);
        }
        return before;
    }

    SeasonWeather weather() {
        return weather;
    }

    /** Bloom courses of this member: early, on time, late; or one when its date is known. */
    int courses() {
        return foods.length;
    }

    FoodCurve food(int course) {
        return foods[course];
    }

    /** Last day of target bloom in a course, as an index of this member's days. */
    double bloomEnd(int course) {
        return bloomEnds[course];
    }

    /** When each bee of the grid comes out; see {@link EmergenceClock#times}. */
    double[] times(Sex sex, Stock stock, int release) {
        return sex == Sex.FEMALE
                ? femaleClock.times(femaleSums, stock.storage(settings.female(), weather, release))
                : maleClock.times(maleSums, stock.storage(settings.male(), weather, release));
    }

    /**
     * Adds the bees of one portion to the days on which they come out, after those that never do and those that too
     * long a cold has left unfit to settle.
     *
     * @param clear whether to begin with empty days
     */
    private void comeOut(Stock stock, int release, double femaleCocoons, double maleCocoons, boolean clear) {
        double chill = stock.chillDays(weather, release);
        ColdRecord cold = settings.cold();
        double[] days = clear ? females : new double[weather.days()];
        double[] maleDays = clear ? males : new double[weather.days()];
        femaleClock.sharesByDay(femaleSums, stock.storage(settings.female(), weather, release), days);
        maleClock.sharesByDay(maleSums, stock.storage(settings.male(), weather, release), maleDays);
        double f = femaleCocoons * (1 - cold.shareNotOut(Sex.FEMALE, chill));
        double m = maleCocoons * (1 - cold.shareNotOut(Sex.MALE, chill));
        for (int d = clear ? 0 : release; d < days.length; d++) {
            double coldByThen = chill + Math.max(0, coldDays[d] - coldDays[release]);
            double fit = days[d] > 0 ? f * cold.shareFit(coldByThen) : 0;
            females[d] = clear ? days[d] * fit : females[d] + days[d] * fit;
            males[d] = clear ? maleDays[d] * m : males[d] + maleDays[d] * m;
        }
    }

    /**
     * What releases on the given days give, for each course of bloom.
     *
     * @param release days of release in this member
     * @param share share of the batch put out on each; sums to 1 or less
     * @param into receives the results, one a course
     */
    void score(Stock stock, int[] release, double[] share, Score[] into) {
        for (int i = 0; i < release.length; i++) {
            comeOut(
                    stock,
                    release[i],
                    stock.batch().females() * share[i],
                    stock.batch().males() * share[i],
                    i == 0);
        }
        Mating.chances(males, settings.nesting().maleDeath(), females, mated);
        for (int k = 0; k < values.length; k++) {
            into[k] = score(values[k], release[0]);
        }
    }

    private Score score(FemaleValue value, int from) {
        double daughters = 0;
        double cells = 0;
        double visits = 0;
        double settled = 0;
        for (int d = from; d < females.length; d++) {
            double out = females[d];
            if (out > 0) {
                daughters += out * mated[d] * value.daughters(d);
                cells += out * value.cells(d);
                visits += out * value.bloomDays(d);
                settled += out * value.settled(d);
            }
        }
        double wanted = settled + cells / settings.tunnels().cellsEach();
        if (wanted <= settings.tunnels().count()) {
            return new Score(daughters, visits, settled, wanted, false);
        }
        NestingResult run = nest(value);
        return new Score(run.daughters(), visits, settled, wanted, true);
    }

    /** True when there is at least one free tunnel of a usable width. */
    boolean hasTunnels() {
        return settings.tunnels().count() > 0;
    }

    /** Share of the females of the last release that come out when no male is expected alive, 0 to 1. */
    double unmated() {
        double out = 0;
        double without = 0;
        for (int d = 0; d < females.length; d++) {
            out += females[d];
            without += females[d] * (1 - mated[d]);
        }
        return out > 0 ? without / out : 0;
    }

    /** The longest run of days without flight among {@code days} days from {@code from}. */
    int longestFlightless(int from, int days) {
        int run = 0;
        int longest = 0;
        for (int d = from; d < Math.min(flight.days(), from + days); d++) {
            run = flight.canFly(d) ? 0 : run + 1;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    /** The nesting season of the last scored release, day by day. */
    NestingResult nest(Stock stock, int release, int course) {
        comeOut(stock, release, stock.batch().females(), stock.batch().males(), true);
        Mating.chances(males, settings.nesting().maleDeath(), females, mated);
        return nest(values[course]);
    }

    private NestingResult nest(FemaleValue value) {
        return new NestingRun(value, settings.nesting(), settings.tunnels()).run(females, mated);
    }
}

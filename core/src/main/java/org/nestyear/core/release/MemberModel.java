package org.nestyear.core.release;

import java.util.Arrays;
import org.nestyear.core.bloom.BloomForecast;
import org.nestyear.core.bloom.FoodCurve;
import org.nestyear.core.flight.FlightDays;
import org.nestyear.core.flight.SkyHours;
import org.nestyear.core.nesting.FemaleValue;
import org.nestyear.core.nesting.Mating;
import org.nestyear.core.nesting.NestingResult;
import org.nestyear.core.nesting.NestingRun;
import org.nestyear.core.nesting.WholeBeeRun;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.species.Sex;
import org.nestyear.core.winter.ColdRecord;

/**
 * One weather member under one set of settings: everything that does not depend on the date of release is worked out
 * once; a release is then a weighted sum over the days on which its bees come out. Its bloom comes early, on time or
 * late by equal chance when the date is a forecast. Not for several threads at once: it keeps its arrays, so that
 * nothing is allocated per release.
 */
final class MemberModel {
    /** Three equally likely errors with mean 0 and variance 1; numerical. */
    private static final double[] ERRORS = {-Math.sqrt(1.5), 0, Math.sqrt(1.5)};

    private static final double[] NO_ERROR = {0};
    /** All of them; see {@link #MemberModel}. */
    static final int ALL_COURSES = -1;

    private final SeasonWeather weather;
    private final ModelSettings settings;
    private final Stock stock;
    private final int today;
    private final int coldStart;
    private final SexClock femaleClock;
    private final SexClock maleClock;
    private final FoodCurve[] foods;
    private final double[] bloomEnds;
    private final double[] lateDays;
    private final FemaleValue[] values;
    private final NestingRun[] nesting;
    private final FlightDays flight;
    private final int[] chillBefore;
    private final double[] females;
    private final double[] males;
    private final double[] mated;
    private final double[] shares;
    /** Of the last release, by course of bloom. */
    private final double[] daughters;

    private final double[] bloomDays;
    private final double[] settled;
    private final boolean[] capped;

    /**
     * Prepares a member.
     *
     * @param hourlyC hourly air temperature over the member's days, °C
     * @param communityFactor factor on the level of other bloom, 1 as told
     * @param course the only course of bloom to run, taken round the three, or {@link #ALL_COURSES}
     */
    MemberModel(
            SeasonWeather weather,
            double[] hourlyC,
            SkyHours sky,
            BloomForecast bloom,
            Stock stock,
            ModelSettings settings,
            double communityFactor,
            int course) {
        this.weather = weather;
        this.settings = settings;
        this.stock = stock;
        today = weather.index(stock.today());
        coldStart = weather.index(stock.coldStart());
        double[] cocoonC = cocoons(hourlyC, settings.boxExcessC());
        femaleClock = SexClock.of(settings.female(), cocoonC);
        maleClock = femaleClock.ofOtherSex(settings.male(), cocoonC);
        flight = FlightDays.of(settings.flight(), weather, hourlyC, sky);
        chillBefore = ColdRecord.chillDaysBefore(weather.meanC(), settings.chillLimitC());
        double[] errors = errors(bloom, course);
        int courses = errors.length;
        foods = new FoodCurve[courses];
        values = new FemaleValue[courses];
        nesting = new NestingRun[courses];
        bloomEnds = new double[courses];
        lateDays = new double[courses];
        for (int k = 0; k < courses; k++) {
            lateDays[k] = errors[k] * bloom.errorDays();
            foods[k] = bloom.curve(weather, lateDays[k], communityFactor);
            bloomEnds[k] = bloom.targetLast(weather) + lateDays[k];
            values[k] = new FemaleValue(settings.nesting(), settings.tunnels(), flight, foods[k]);
            nesting[k] = new NestingRun(values[k], settings.nesting(), settings.tunnels());
        }
        females = new double[weather.days()];
        males = new double[weather.days()];
        mated = new double[weather.days()];
        shares = new double[weather.days()];
        daughters = new double[courses];
        bloomDays = new double[courses];
        settled = new double[courses];
        capped = new boolean[courses];
    }

    private static double[] errors(BloomForecast bloom, int course) {
        if (bloom.errorDays() <= 0) {
            return NO_ERROR;
        }
        return course == ALL_COURSES ? ERRORS : new double[] {ERRORS[course % ERRORS.length]};
    }

    private static double[] cocoons(double[] airC, double excessC) {
        if (excessC == 0) {
            return airC;
        }
        double[] cocoonC = airC.clone();
        for (int h = 0; h < cocoonC.length; h++) {
            cocoonC[h] += excessC;
        }
        return cocoonC;
    }

    SeasonWeather weather() {
        return weather;
    }

    Stock stock() {
        return stock;
    }

    /** Bloom courses of this member: early, on time, late; or one when its date is known. */
    int courses() {
        return foods.length;
    }

    FoodCurve food(int course) {
        return foods[course];
    }

    /** Days by which bloom comes later in a course than forecast; negative for earlier. */
    double lateDays(int course) {
        return lateDays[course];
    }

    /** Cells a female could build on a day were food no limit. */
    double cellsOfAFemale(int day) {
        return flight.cells(day);
    }

    /** Last day of target bloom in a course, as an index of this member's days. */
    double bloomEnd(int course) {
        return bloomEnds[course];
    }

    /** Days of chill by day {@code day}, for bees put out on that day or at air temperature. */
    double chillDays(int day) {
        return stock.isInFridge()
                ? Math.max(0, stock.chillDays() + day - today)
                : chillBefore[day] - chillBefore[Math.max(0, Math.min(day, coldStart))];
    }

    /** When each bee of the grid comes out; the array is used again by the next call. */
    double[] times(Sex sex, int release) {
        SexClock clock = sex == Sex.FEMALE ? femaleClock : maleClock;
        return clock.times(stock, coldStart, chillDays(release), release);
    }

    /**
     * Adds the bees of one portion to the days on which they come out, after those that never do, those lost while they
     * wait in the box, and those that too long a cold has left unfit to settle. Cold after the release counts as well.
     *
     * @param share share of the batch put out, 0 to 1
     * @param femaleDays receives females fit to settle by day
     * @param maleDays receives males by day
     */
    void comeOut(int release, double share, double[] femaleDays, double[] maleDays) {
        comeOut(Sex.FEMALE, femaleClock, release, stock.batch().females() * share, femaleDays);
        comeOut(Sex.MALE, maleClock, release, stock.batch().males() * share, maleDays);
    }

    private void comeOut(Sex sex, SexClock clock, int release, double cocoons, double[] into) {
        ColdRecord cold = settings.cold();
        double chill = chillDays(release);
        int end = clock.sharesByDay(stock, coldStart, chill, release, shares);
        for (int d = release; d < end; d++) {
            if (shares[d] > 0) {
                double chillByThen = chill + chillBefore[d] - chillBefore[release];
                double out = 1 - cold.shareNotOut(sex, chillByThen);
                double fit = sex == Sex.FEMALE ? cold.shareFit(chillByThen) : 1;
                double kept = stock.isBoxed() ? settings.box().shareLeft(d - release) : 1;
                into[d] += cocoons * shares[d] * out * fit * kept;
            }
        }
    }

    private void clear() {
        Arrays.fill(females, 0);
        Arrays.fill(males, 0);
    }

    /** Works out what one release of the whole batch gives; read it with the methods below. */
    void release(int day) {
        clear();
        comeOut(day, 1, females, males);
        score(females, males, day);
    }

    /**
     * Works out what two releases give.
     *
     * @param share share of the batch put out on the first day, 0 to 1; the rest on the second
     */
    void release(int first, int second, double share) {
        clear();
        comeOut(first, share, females, males);
        comeOut(second, 1 - share, females, males);
        score(females, males, first);
    }

    private void score(double[] femalesOut, double[] malesOut, int from) {
        int to = femalesOut.length;
        while (to > from && femalesOut[to - 1] == 0) {
            to--;
        }
        Mating.chances(malesOut, settings.nesting().maleDeath(), femalesOut, mated, from, to);
        for (int k = 0; k < values.length; k++) {
            score(k, femalesOut, from, to);
        }
    }

    private void score(int k, double[] femalesOut, int from, int to) {
        FemaleValue value = values[k];
        double young = 0;
        double cells = 0;
        double visits = 0;
        double stay = 0;
        for (int d = from; d < to; d++) {
            double out = femalesOut[d];
            if (out > 0) {
                young += out * mated[d] * value.daughters(d);
                cells += out * value.cells(d);
                visits += out * value.bloomDays(d);
                stay += out * value.settled(d);
            }
        }
        bloomDays[k] = visits;
        settled[k] = stay;
        capped[k] = stay + cells / settings.tunnels().cellsEach()
                > settings.tunnels().count();
        daughters[k] = capped[k] ? nesting[k].daughters(femalesOut, mated) : young;
    }

    /** Surviving daughters of a mated female by the day she comes out, added up over the courses of bloom. */
    double[] daughtersOfAFemale() {
        double[] sum = new double[weather.days()];
        for (FemaleValue value : values) {
            for (int d = 0; d < sum.length; d++) {
                sum[d] += value.daughters(d);
            }
        }
        return sum;
    }

    /** Turns males out by day into males alive by day, in place. */
    void keepAlive(double[] malesOut) {
        Mating.alive(malesOut, settings.nesting().maleDeath(), 0, malesOut.length);
    }

    /** Surviving daughters of the last release in a course. */
    double daughters(int course) {
        return daughters[course];
    }

    /** Female flight days inside the target bloom of the last release in a course. */
    double bloomDays(int course) {
        return bloomDays[course];
    }

    /** Females of the last release that settle in a course. */
    double settled(int course) {
        return settled[course];
    }

    /** Whether tunnels ran out after the last release in a course. */
    boolean capped(int course) {
        return capped[course];
    }

    /** True when there is at least one free tunnel of a usable width. */
    boolean hasTunnels() {
        return settings.tunnels().count() > 0;
    }

    /** Females of the last release out by the end of a day, in bees. */
    double femalesBy(int day) {
        return upTo(females, day);
    }

    /** Males of the last release out by the end of a day, in bees. */
    double malesBy(int day) {
        return upTo(males, day);
    }

    private static double upTo(double[] byDay, int day) {
        double sum = 0;
        for (int d = 0; d <= Math.min(day, byDay.length - 1); d++) {
            sum += byDay[d];
        }
        return sum;
    }

    /** Females of the last release that have settled by the end of a day in a course. */
    double settledBy(int course, int day) {
        double sum = 0;
        for (int d = 0; d <= Math.min(day, females.length) - settings.nesting().prenestingDays(); d++) {
            sum += females[d] * values[course].settled(d);
        }
        return sum;
    }

    /** Females of the last release that nest on the morning of a day in a course, tunnels being no limit. */
    double nestingOn(int course, int day) {
        int pre = settings.nesting().prenestingDays();
        double sum = 0;
        for (int d = 0; d + pre <= Math.min(day, females.length - 1); d++) {
            if (females[d] > 0) {
                sum += females[d] * values[course].settled(d) * values[course].alive(d + pre, day);
            }
        }
        return sum;
    }

    /** Cells that a female nesting on a day still builds in a course, tunnels being no limit. */
    double cellsStill(int course, int day) {
        return values[course].cellsStill(day);
    }

    /** Days without flight from day {@code from} to before day {@code to}. */
    int flightlessDays(int from, int to) {
        int days = 0;
        for (int d = Math.max(0, from); d < Math.min(flight.days(), to); d++) {
            days += flight.canFly(d) ? 0 : 1;
        }
        return days;
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

    /** The longest run of days without flight from day {@code from} to before day {@code to}. */
    int longestFlightless(int from, int to) {
        int run = 0;
        int longest = 0;
        for (int d = Math.max(0, from); d < Math.min(flight.days(), to); d++) {
            run = flight.canFly(d) ? 0 : run + 1;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    /** The last release in a course, to be run bee by bee. */
    WholeBeeRun wholeBees(int course) {
        return new WholeBeeRun(
                values[course],
                settings.nesting(),
                settings.tunnels(),
                stock.batch().females(),
                females,
                stock.batch().males(),
                males);
    }

    /** The nesting season after the last release, day by day. */
    NestingResult nest(int course) {
        return nesting[course].run(females, mated);
    }
}

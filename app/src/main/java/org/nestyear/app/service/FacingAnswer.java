package org.nestyear.app.service;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.FacingQuestion.OfPlace;
import org.nestyear.app.service.FacingQuestion.OfSeason;
import org.nestyear.core.place.Site;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.siting.HotTunnels;
import org.nestyear.core.siting.WayToLook;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.BeeKind;
import org.nestyear.core.sun.Front;
import org.nestyear.core.sun.FrontSun;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.CatalogueFiles;
import org.nestyear.data.DataFault;
import org.nestyear.data.DayOfPlan;
import org.nestyear.data.SeasonFile;
import org.nestyear.data.TextSource;

/**
 * Ways for a house front to look, best first: by the light they get on clear mornings, less their hot days.
 *
 * @param ways best first
 * @param now the way the house looks now, or null where the file does not say
 * @param weeks the way it looks now, or else the best, week by week
 * @param years years of weather the heat was reckoned from
 */
public record FacingAnswer(
        Site site,
        BeeKind bees,
        List<WayToLook> ways,
        @Nullable WayToLook now,
        List<Week> weeks,
        int years,
        List<Parameter> basis,
        String fingerprint) {
    /** Eight ways to look; numerical. */
    private static final int STEP_DEG = 45;

    private static final int TURN_DEG = 360;
    /** Days before and after the middle of a week, by definition. */
    private static final int EITHER_SIDE = 3;

    private static final int WEEK_DAYS = 7;
    /** Half a year, from the seasons of the north to those of the south; numerical. */
    private static final int HALF_YEAR_DAYS = 182;

    public FacingAnswer {
        ways = List.copyOf(ways);
        weeks = List.copyOf(weeks);
        basis = List.copyOf(basis);
    }

    /**
     * One week of the front.
     *
     * @param from its first day
     * @param sun a clear day in its middle
     * @param heat its tunnels over the years of the record
     */
    public record Week(LocalDate from, FrontSun sun, HotTunnels heat) {}

    /**
     * Ranks the ways to look at a season's site.
     *
     * @throws Refusal if the file is wrong, or its weather has no day in the weeks of these bees
     */
    public static FacingAnswer of(FacingQuestion question) {
        Given given = given(question);
        Site site = given.site();
        BeeKind bees = question.bees() == null ? given.bees() : question.bees();
        ReadLog read = new ReadLog(CatalogueFiles.sums("siting").completedBy(CatalogueFiles.sums("mason_bees")));
        List<LocalDate> middles = middles(site, given.today().getYear(), bees, read);
        LocalDate last = dayOfYear(site, given.today().getYear(), read.value(bees.word() + "_sun_to_day"));
        List<LocalDate> sunDays = question.dates().isEmpty()
                ? middles.stream().filter(day -> !day.isAfter(last)).toList()
                : question.dates();
        double warm = read.value("flight_radiation");
        List<List<double[]>> air = air(given, middles);
        Parameter excess = read.row("tunnel_excess_c");
        @Nullable Double told = question.excessC();
        HotTunnels.Limits limits = HotTunnels.Limits.of(excess, read.row("tunnel_watch_c"), read.row("tunnel_urgent_c"))
                .withExcess(told == null ? excess.value() : told);
        HotTunnels.Limits least = limits.withExcess(told == null ? excess.low() : told);
        HotTunnels.Limits most = limits.withExcess(told == null ? excess.high() : told);
        List<WayToLook> ways = new ArrayList<>();
        for (double deg : facings(site)) {
            ways.add(WayToLook.of(
                    site,
                    front(site, sunDays, deg, warm),
                    heat(site, deg, middles, air, limits),
                    heat(site, deg, middles, air, least),
                    heat(site, deg, middles, air, most)));
        }
        ways = WayToLook.inOrder(
                ways,
                bees == BeeKind.MASON ? WayToLook::urgentDays : WayToLook::watchDays,
                read.value(bees.word() + "_hot_day_worth"));
        @Nullable
        WayToLook now = ways.stream()
                .filter(way -> site.facesDeg() != null && site.facesDeg() % TURN_DEG == way.facesDeg())
                .findFirst()
                .orElse(null);
        double shown = (now == null ? ways.get(0) : now).facesDeg();
        List<FrontSun> sun = front(site, middles, shown, warm);
        List<HotTunnels> heat = heat(site, shown, middles, air, limits);
        List<Week> weeks = IntStream.range(0, middles.size())
                .mapToObj(i -> new Week(middles.get(i).minusDays(EITHER_SIDE), sun.get(i), heat.get(i)))
                .toList();
        read.row("house_height_m");
        read.row("guard_mesh_mm");
        read.row("guard_gap_mm");
        Fingerprint print = new Fingerprint("");
        print.add(question.dates());
        print.add(String.valueOf(question.excessC()));
        print.add(site);
        print.add(bees);
        print.add(ways);
        print.add(read.read());
        return new FacingAnswer(site, bees, ways, now, weeks, years(given), read.read(), print.digits());
    }

    /**
     * What is known of a house before it is asked about.
     *
     * @param bees those of the season, mason bees where there is none
     */
    private record Given(Site site, WeatherRecord weather, LocalDate today, BeeKind bees) {}

    private static Given given(FacingQuestion question) {
        if (question.house() instanceof OfPlace place) {
            WeatherRecord weather = StationWeather.read(place.weather()).measured();
            return new Given(place.site(), weather, question.clock(), BeeKind.MASON);
        }
        try {
            SeasonInputs inputs = SeasonFile.read(
                            TextSource.ofFile(((OfSeason) question.house()).file()),
                            new DayOfPlan(null, question.clock()))
                    .inputs();
            return new Given(inputs.site(), inputs.weather(), inputs.today(), beesOf(inputs));
        } catch (DataFault fault) {
            throw Refusal.of(fault);
        }
    }

    private static BeeKind beesOf(SeasonInputs inputs) {
        return EitherBee.isLeafcutter(EitherBee.named(inputs.batches().get(0).species()))
                ? BeeKind.LEAFCUTTER
                : BeeKind.MASON;
    }

    private static TreeSet<Double> facings(Site site) {
        TreeSet<Double> ways = new TreeSet<>();
        for (int deg = 0; deg < TURN_DEG; deg += STEP_DEG) {
            ways.add((double) deg);
        }
        if (site.facesDeg() != null) {
            ways.add(site.facesDeg() % TURN_DEG);
        }
        return ways;
    }

    private static LocalDate dayOfYear(Site site, int year, double day) {
        LocalDate north = LocalDate.ofYearDay(year, (int) Math.round(day));
        return site.isNorthern() ? north : north.plusDays(HALF_YEAR_DAYS);
    }

    private static List<LocalDate> middles(Site site, int year, BeeKind bees, ReadLog read) {
        LocalDate from = dayOfYear(site, year, read.value(bees.word() + "_sun_from_day"));
        LocalDate to = dayOfYear(
                site, year, read.value(bees == BeeKind.MASON ? "mason_heat_to_day" : "leafcutter_sun_to_day"));
        return from.plusDays(EITHER_SIDE)
                .datesUntil(to.plusDays(1), Period.ofDays(WEEK_DAYS))
                .toList();
    }

    private static List<List<double[]>> air(Given given, List<LocalDate> middles) {
        @Nullable WeatherRecord known = given.weather().upTo(given.today()).orElse(null);
        List<List<double[]>> air = new ArrayList<>();
        for (LocalDate middle : middles) {
            List<double[]> hours =
                    known == null ? List.of() : HotTunnels.hours(known, given.site(), middle, EITHER_SIDE);
            if (hours.isEmpty()) {
                throw new Refusal(
                        Refusal.Kind.NO_ANSWER,
                        "NY-FACING-WEATHER",
                        "",
                        "The weather before " + given.today() + " has no day in the week around "
                                + middle.getDayOfMonth() + "/" + middle.getMonthValue()
                                + ", so how hot the tunnels get cannot be told.",
                        "Maybe a weather file of a whole past year is missing.");
            }
            air.add(hours);
        }
        return air;
    }

    private static int years(Given given) {
        return (int) given.weather().days().stream()
                .filter(day -> !day.date().isAfter(given.today()))
                .map(day -> day.date().getYear())
                .distinct()
                .count();
    }

    private static List<FrontSun> front(Site site, List<LocalDate> days, double facesDeg, double warmWm2) {
        return days.stream()
                .map(day -> FrontSun.of(site, day, List.of(facesDeg), warmWm2).get(0))
                .toList();
    }

    private static List<HotTunnels> heat(
            Site site, double facesDeg, List<LocalDate> middles, List<List<double[]>> air, HotTunnels.Limits limits) {
        Front front = Front.of(site, facesDeg);
        return IntStream.range(0, middles.size())
                .mapToObj(i -> HotTunnels.of(air.get(i), HotTunnels.clearLightWm2(front, middles.get(i)), limits))
                .toList();
    }
}

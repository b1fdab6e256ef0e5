package org.nestyear.app.service;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.place.Site;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.sun.FrontSun;
import org.nestyear.data.DataFault;
import org.nestyear.data.DayOfPlan;
import org.nestyear.data.SeasonFile;
import org.nestyear.data.TextSource;

/**
 * Ways for a house front to look, best first: by the light it gets on clear mornings.
 *
 * @param dates the days looked at
 * @param facings most morning light first
 */
public record FacingAnswer(Site site, List<LocalDate> dates, List<Facing> facings, String fingerprint) {
    /** Eight ways to look; numerical. */
    private static final int STEP_DEG = 45;

    private static final int TURN_DEG = 360;
    /** Months of flight in the north; half a year later in the south. */
    private static final List<Integer> MONTHS = List.of(4, 5, 6);

    private static final int HALF_YEAR_MONTHS = 6;

    public FacingAnswer {
        dates = List.copyOf(dates);
        facings = List.copyOf(facings);
    }

    /**
     * One way to look, over the days.
     *
     * @param facesDeg degrees clockwise from north
     * @param isOwn whether the house looks that way now
     * @param firstSun mean time of day at which the sun first shines on the front, by the clock of the place, or null where
     *     on some day it never does
     * @param morningMinutes mean minutes of sun before 10:00 by the sun
     * @param morningWhM2 mean light before then, Wh/m²
     * @param hottestWm2 most light after noon on any of the days, W/m²
     */
    public record Facing(
            double facesDeg,
            boolean isOwn,
            @Nullable LocalTime firstSun,
            double morningMinutes,
            double morningWhM2,
            double hottestWm2) {}

    /**
     * Ranks the ways to look at a season's site.
     *
     * @param clock the day it is, for a file that names none
     * @param asked days to look at; the first of April, May and June (October to December in the south) if none
     * @throws Refusal if the file is wrong
     */
    public static FacingAnswer of(Path file, LocalDate clock, List<LocalDate> asked) {
        Site site;
        LocalDate today;
        try {
            SeasonInputs inputs = SeasonFile.read(TextSource.ofFile(file), new DayOfPlan(null, clock))
                    .inputs();
            site = inputs.site();
            today = inputs.today();
        } catch (DataFault fault) {
            throw Refusal.of(fault);
        }
        List<LocalDate> dates = asked.isEmpty() ? months(site, today.getYear()) : asked;
        TreeSet<Double> ways = new TreeSet<>();
        for (int deg = 0; deg < TURN_DEG; deg += STEP_DEG) {
            ways.add((double) deg);
        }
        if (site.facesDeg() != null) {
            ways.add(site.facesDeg() % TURN_DEG);
        }
        List<List<FrontSun>> days = dates.stream()
                .map(date -> FrontSun.of(site, date, List.copyOf(ways)))
                .toList();
        List<Facing> facings = new ArrayList<>();
        for (int i = 0; i < ways.size(); i++) {
            int way = i;
            facings.add(facing(site, days.stream().map(day -> day.get(way)).toList()));
        }
        facings.sort(Comparator.comparingDouble(Facing::morningWhM2).reversed());
        Fingerprint print = new Fingerprint("");
        print.add(site);
        print.add(dates);
        return new FacingAnswer(site, dates, facings, print.digits());
    }

    private static List<LocalDate> months(Site site, int year) {
        return MONTHS.stream()
                .map(month -> LocalDate.of(year, site.isNorthern() ? month : month + HALF_YEAR_MONTHS, 1))
                .toList();
    }

    private static Facing facing(Site site, List<FrontSun> days) {
        double faces = days.get(0).facesDeg();
        return new Facing(
                faces,
                site.facesDeg() != null && site.facesDeg() % TURN_DEG == faces,
                firstSun(site, days),
                days.stream().mapToDouble(FrontSun::morningMinutes).average().orElse(0),
                days.stream().mapToDouble(FrontSun::morningWhM2).average().orElse(0),
                days.stream().mapToDouble(FrontSun::hottestWm2).max().orElse(0));
    }

    private static @Nullable LocalTime firstSun(Site site, List<FrontSun> days) {
        long seconds = 0;
        for (FrontSun day : days) {
            if (day.firstSun() == null) {
                return null;
            }
            seconds += Duration.between(
                            day.date().atStartOfDay(site.zone()), day.firstSun().atZone(site.zone()))
                    .toSeconds();
        }
        return LocalTime.MIDNIGHT.plusSeconds(seconds / days.size());
    }
}

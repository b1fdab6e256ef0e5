package org.nestyear.checks.scenario;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.nestyear.checks.ReferenceWeather;
import org.nestyear.checks.release.Draft;
import org.nestyear.core.place.Site;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.NestKind;
import org.nestyear.core.season.Nests;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.CatalogueFiles;

/** A handful of springs that between them give every rule something to say. */
final class Situations {
    private static final int YEARS = 9;
    private static final List<Plan> PLANS = make();

    private Situations() {}

    static List<Plan> plans() {
        return PLANS;
    }

    private static List<Plan> make() {
        List<Plan> plans = new ArrayList<>();
        for (String species : List.of("Osmia lignaria", "Osmia cornifrons", "Osmia bicornis", "Osmia cornuta")) {
            add(plans, draft -> {
                draft.species = species;
                place(draft);
            });
        }
        add(plans, draft -> draft.males = 0);
        add(plans, draft -> draft.males = 3);
        add(plans, draft -> draft.tunnels(0));
        add(plans, draft -> {
            draft.tunnels(40);
            draft.chillDays = 60;
        });
        add(plans, draft -> draft.nests = List.of(new Nests(NestKind.REED, true, 7, 90, 900)));
        add(plans, draft -> {
            draft.females = 8;
            draft.males = 12;
        });
        add(plans, draft -> draft.origin = "a far valley");
        cold(plans, 20, 3);
        cold(plans, 200, 3);
        cold(plans, 150, 7);
        cold(plans, 60, 8);
        cold(plans, 60, 11);
        cold(plans, 150, -4);
        cold(plans, 275, 3);
        add(plans, draft -> {
            draft.species = "Osmia cornuta";
            place(draft);
            draft.chillDays = 120;
            draft.chillC = 7;
        });
        add(plans, draft -> draft.wintered = Wintered.OUTDOORS);
        add(plans, draft -> draft.wintered = Wintered.UNOPENED);
        add(plans, draft -> draft.wintered = Wintered.SHED);
        add(plans, draft -> {
            draft.bloom = new BloomDates.Dated(LocalDate.of(2013, 1, 10), LocalDate.of(2013, 1, 28));
        });
        add(plans, draft -> {
            draft.bloom = new BloomDates.Dated(LocalDate.of(2013, 2, 14), LocalDate.of(2013, 2, 24));
        });
        add(plans, draft -> {
            draft.bloom = new BloomDates.FromPastDates(null);
            draft.pastBloom =
                    List.copyOf(ReferenceWeather.cherryPeaks().tailMap(2004).values());
        });
        add(plans, draft -> {
            draft.bloom = new BloomDates.FromPastDates(12);
            draft.pastBloom = List.of(LocalDate.of(2012, 3, 20), LocalDate.of(1990, 3, 15));
        });
        add(plans, draft -> {
            draft.keepFrom(LocalDate.of(2008, 1, 1));
            draft.today = LocalDate.of(2012, 3, 20);
            holes(draft);
        });
        add(
                plans,
                draft -> draft.weather =
                        draft.weather.upTo(LocalDate.of(2012, 12, 1)).orElseThrow());
        add(plans, draft -> {
            draft.today = LocalDate.of(2012, 3, 20);
            draft.chillDays = 5;
        });
        add(plans, draft -> draft.weather = cooler(draft.weather, 6));
        for (double coverM2 : List.of(0.0, 20.0, 1e6)) {
            add(plans, draft -> {
                draft.flora = CatalogueFiles.flora();
                draft.coverM2 = coverM2;
                draft.bloom = new BloomDates.ThermalTime(MonthDay.of(2, 1), 0, 424, coverM2 > 20 ? 120 : 18);
            });
        }
        return List.copyOf(plans);
    }

    private static void add(List<Plan> plans, Consumer<Draft> change) {
        Draft draft = Draft.washington(YEARS);
        change.accept(draft);
        plans.add(draft.plan());
    }

    private static WeatherRecord cooler(WeatherRecord weather, double byC) {
        return new WeatherRecord(weather.days().stream()
                .map(day -> new DailyWeather(
                        day.date(),
                        day.minC() - byC,
                        day.maxC() - byC,
                        day.rainMm(),
                        day.windMs(),
                        day.radiationMjM2()))
                .toList());
    }

    private static void cold(List<Plan> plans, double days, double celsius) {
        add(plans, draft -> {
            draft.chillDays = days;
            draft.chillC = celsius;
        });
    }

    /** European bees on the Rhine plain; the weather stays Washington's, which matters to no rule. */
    private static void place(Draft draft) {
        if (draft.species.equals("Osmia bicornis") || draft.species.equals("Osmia cornuta")) {
            draft.site = new Site("Reed Bank", 48.9, 8.7, 250, ZoneId.of("Europe/Berlin"), null, List.of());
        }
    }

    private static void holes(Draft draft) {
        draft.weather = new WeatherRecord(draft.weather.days().stream()
                .filter(day -> day.date().getDayOfMonth() != 17)
                .toList());
    }
}

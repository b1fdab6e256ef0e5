package org.nestyear.checks.release;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.nestyear.checks.ReferenceWeather;
import org.nestyear.core.forage.Flora;
import org.nestyear.core.place.Site;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.plan.Planner;
import org.nestyear.core.release.InOrder;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.CommunityBloom;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.NestKind;
import org.nestyear.core.season.Nests;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.season.Wintered;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ParameterTable;
import org.nestyear.core.species.Catalogue;
import org.nestyear.core.species.Species;
import org.nestyear.core.weather.DailyWeather;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.CatalogueFiles;

/** A season being put together: sensible at Washington from the start, so that a test names only what it changes. */
public final class Draft {
    private static final Catalogue CATALOGUE = CatalogueFiles.load();

    public Site site = new Site("Washington", 38.847, -77.035, 4, ZoneId.of("America/New_York"), null, List.of());
    public WeatherRecord weather;
    public @Nullable WeatherRecord forecast;
    public String species = "Osmia lignaria";
    public String origin = "local";
    public int females = 500;
    public int males = 900;
    public Wintered wintered = Wintered.FRIDGE;
    public double chillDays = 90;
    public double chillC = 4;
    public List<Nests> nests = List.of(new Nests(NestKind.TUBE, true, 8, 152, 20_000));
    public BloomDates bloom = new BloomDates.ThermalTime(MonthDay.of(2, 1), 0, 424, 18);
    public List<LocalDate> pastBloom = List.of();
    public @Nullable CommunityBloom community;
    public Goal goal = Goal.BROOD;
    public double coverM2;
    /** The plant list, for a plan that holds flowers against cells. */
    public @Nullable Flora flora;

    public LocalDate today;
    /** Catalogue values to be other than shipped. */
    public final Map<String, Double> changed = new TreeMap<>();

    private Draft(WeatherRecord weather, LocalDate today) {
        this.weather = weather;
        this.today = today;
    }

    /** All 43 years to the end of 2012, planned on 1 February 2013. */
    public static Draft washington() {
        return new Draft(ReferenceWeather.washington(), LocalDate.of(2013, 2, 1));
    }

    /** So many years up to 2012, planned on 1 February 2013. */
    public static Draft washington(int years) {
        Draft draft = washington();
        draft.keepFrom(LocalDate.of(2013 - years, 1, 1));
        return draft;
    }

    /** Drops weather before a day. */
    public void keepFrom(LocalDate first) {
        weather = new WeatherRecord(
                weather.days().stream().filter(d -> !d.date().isBefore(first)).toList());
    }

    /** Changes every day of the weather. */
    public void eachDay(UnaryOperator<DailyWeather> change) {
        weather = new WeatherRecord(weather.days().stream().map(change).toList());
    }

    /** Sets the number of free tunnels. */
    public void tunnels(int count) {
        nests = List.of(new Nests(NestKind.TUBE, true, 8, 152, count));
    }

    /** The inputs as they stand. */
    public SeasonInputs inputs() {
        boolean cold = wintered == Wintered.FRIDGE;
        return new SeasonInputs(
                site,
                weather,
                forecast,
                List.of(new Batch(
                        species, origin, females, males, wintered, cold ? chillDays : null, cold ? chillC : null)),
                nests,
                List.of(new Plant("cherry", coverM2, true, bloom, pastBloom)),
                community,
                goal,
                today);
    }

    /** The species as shipped, with the values changed that are to be. */
    public Species bees() {
        Species shipped = CATALOGUE.find(species).orElseThrow();
        if (changed.isEmpty()) {
            return shipped;
        }
        List<Parameter> rows = new ArrayList<>();
        for (Parameter row : shipped.parameters().rows()) {
            Double value = changed.get(row.id());
            rows.add(value == null ? row : with(row, value));
        }
        return new Species(shipped.latinName(), shipped.commonName(), new ParameterTable(species, rows));
    }

    private static Parameter with(Parameter row, double value) {
        return new Parameter(
                row.id(),
                value,
                row.unit(),
                Math.min(value, row.low()),
                Math.max(value, row.high()),
                row.basis(),
                row.source(),
                row.locator(),
                row.borrowedFrom(),
                row.note());
    }

    /** The plan. */
    public Plan plan() {
        return Planner.plan(inputs(), bees(), flora, InOrder.ONE_BY_ONE);
    }
}

package org.nestyear.core.bloom;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.nestyear.core.bloom.fit.BloomChoice;
import org.nestyear.core.bloom.fit.BloomKind;
import org.nestyear.core.bloom.fit.BloomModelChoice;
import org.nestyear.core.bloom.fit.BloomYear;
import org.nestyear.core.bloom.fit.YearCourse;
import org.nestyear.core.bloom.fit.YearCourses;
import org.nestyear.core.bloom.spring.SpringIndex;
import org.nestyear.core.season.BloomDates;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonWeather;
import org.nestyear.core.source.ParameterReader;
import org.nestyear.core.weather.WeatherRecord;

/** The plants that have dates of past years, each with the model chosen for it. */
public final class PastBlooms {
    private final List<ModelDays> all;

    private PastBlooms(List<ModelDays> all) {
        this.all = List.copyOf(all);
    }

    /** For seasons in which no plant has such dates. */
    public static PastBlooms none() {
        return new PastBlooms(List.of());
    }

    /**
     * Chooses a model for each plant that has dates of past years.
     *
     * @param measured the weather up to the day of the plan, with its gaps
     * @param known the same with its gaps filled
     * @param latitudeDeg degrees north
     * @param ensemble this season's members, at least one; only models that all of them can run are tried
     * @param parameters constants of the models; nothing is read when no plant has such dates
     */
    public static PastBlooms of(
            List<Plant> plants,
            WeatherRecord measured,
            WeatherRecord known,
            double latitudeDeg,
            List<SeasonWeather> ensemble,
            ParameterReader parameters) {
        List<Plant> told = plants.stream().filter(PastBlooms::isTold).distinct().toList();
        if (told.isEmpty()) {
            return none();
        }
        YearCourses courses = new YearCourses(parameters, new SpringIndex(parameters), latitudeDeg);
        BloomModelChoice models = new BloomModelChoice(parameters);
        List<YearCourse> season = ensemble.stream().map(courses::of).toList();
        Set<BloomKind> kinds = servedByAll(season);
        LocalDate dayOne = courses.dayOne(ensemble.get(0).frame().year());
        List<ModelDays> all = new ArrayList<>();
        for (Plant plant : told) {
            List<BloomYear> years = new ArrayList<>();
            List<LocalDate> unused = new ArrayList<>();
            for (LocalDate date : plant.pastBloom()) {
                Optional<BloomYear> year = BloomYear.of(date, measured, known, courses);
                year.ifPresentOrElse(years::add, () -> unused.add(date));
            }
            BloomChoice choice = models.choose(years, kinds);
            List<BloomKind> notRun = years.size() < models.leastYears()
                    ? List.of()
                    : EnumSet.complementOf(EnumSet.copyOf(kinds)).stream().toList();
            all.add(new ModelDays(new PastBloom(plant, dayOne, choice, unused, notRun), courses, ensemble, season));
        }
        return new PastBlooms(all);
    }

    private static boolean isTold(Plant plant) {
        return !plant.pastBloom().isEmpty() || plant.bloom() instanceof BloomDates.FromPastDates;
    }

    private static Set<BloomKind> servedByAll(List<YearCourse> season) {
        Set<BloomKind> kinds = EnumSet.allOf(BloomKind.class);
        if (!season.stream().allMatch(YearCourse::hasChill)) {
            kinds.remove(BloomKind.CHILL_THEN_HEAT);
        }
        if (!season.stream().allMatch(course -> course.springBloom().isPresent())) {
            kinds.remove(BloomKind.SPRING_INDEX);
        }
        return kinds;
    }

    /** What was chosen, in the order of the plants. */
    public List<PastBloom> list() {
        return all.stream().map(ModelDays::past).toList();
    }

    /** The model's days of a plant; empty when it has no dates of past years. */
    Optional<ModelDays> find(Plant plant) {
        return all.stream().filter(days -> days.past().plant().equals(plant)).findFirst();
    }
}

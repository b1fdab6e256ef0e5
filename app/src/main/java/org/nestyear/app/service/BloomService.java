package org.nestyear.app.service;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.bloom.fit.BloomBand;
import org.nestyear.core.bloom.fit.BloomChoice;
import org.nestyear.core.bloom.fit.BloomModelChoice;
import org.nestyear.core.bloom.fit.BloomYear;
import org.nestyear.core.bloom.fit.YearCourses;
import org.nestyear.core.bloom.spring.SpringIndex;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.BloomDatesCsv;
import org.nestyear.data.CatalogueFiles;
import org.nestyear.data.DataFault;
import org.nestyear.data.TextSource;

/** Answers when a plant blooms: chooses a model on its own dates, and runs it in other years. */
public final class BloomService {
    private BloomService() {}

    /**
     * Answers the question.
     *
     * @throws Refusal if a file is wrong, or a year asked for has a date of its own
     */
    public static BloomAnswer answer(BloomQuestion question) {
        StationWeather station = StationWeather.read(question.weather());
        List<LocalDate> dates;
        try {
            dates = BloomDatesCsv.read(TextSource.ofFile(question.observed()));
        } catch (DataFault fault) {
            throw Refusal.of(fault);
        }
        ReadLog read = new ReadLog(CatalogueFiles.bloomModels().completedBy(CatalogueFiles.springIndex()));
        YearCourses courses = new YearCourses(read, new SpringIndex(read), question.latitudeDeg());
        WeatherRecord filled = station.filled().weather();
        List<BloomYear> years = new ArrayList<>();
        List<LocalDate> unused = new ArrayList<>();
        Set<Integer> observed = new TreeSet<>();
        for (LocalDate date : dates) {
            observed.add(courses.yearOf(date));
            BloomYear.of(date, station.measured(), filled, courses).ifPresentOrElse(years::add, () -> unused.add(date));
        }
        BloomChoice choice = new BloomModelChoice(read).choose(years);
        List<BloomAnswer.Predicted> predicted = new ArrayList<>();
        for (int year : wanted(question, station.measured(), observed)) {
            BloomAnswer.Dates band = predict(choice, station, courses, year);
            if (band != null || !question.years().isEmpty()) {
                predicted.add(new BloomAnswer.Predicted(year, band));
            }
        }
        Fingerprint print = new Fingerprint(PlanService.catalogue().fingerprint());
        print.add(question.latitudeDeg());
        print.add(question.years());
        print.add(dates);
        print.add(Arrays.toString(station.measured().days().toArray()));
        LocalDate dayOne = courses.dayOne(courses.yearOf(station.measured().last()));
        return new BloomAnswer(choice, unused, predicted, dayOne, read.read(), print.digits());
    }

    private static Set<Integer> wanted(BloomQuestion question, WeatherRecord weather, Set<Integer> observed) {
        Set<Integer> wanted = new TreeSet<>(question.years());
        for (int year : wanted) {
            if (observed.contains(year)) {
                throw Refusal.usage(
                        "--predict names " + year + ", of which the bloom was observed; expected years without a date.",
                        "");
            }
        }
        if (wanted.isEmpty()) {
            for (int year = weather.first().getYear(); year <= weather.last().getYear(); year++) {
                wanted.add(year);
            }
            wanted.removeAll(observed);
        }
        return wanted;
    }

    private static BloomAnswer.@Nullable Dates predict(
            BloomChoice choice, StationWeather station, YearCourses courses, int year) {
        BloomBand band = courses.of(station.filled().weather(), year)
                .flatMap(choice::forecast)
                .orElse(null);
        if (band == null) {
            return null;
        }
        LocalDate one = courses.dayOne(year);
        LocalDate date = date(one, band.middle());
        return BloomYear.isMeasured(station.measured(), one, date)
                ? new BloomAnswer.Dates(date(one, band.early()), date, date(one, band.late()))
                : null;
    }

    private static LocalDate date(LocalDate one, double day) {
        return one.plusDays((long) Math.floor(day) - 1);
    }
}

package org.nestyear.app.service;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.emergence.EmergenceClock;
import org.nestyear.core.emergence.EmergenceSettings;
import org.nestyear.core.emergence.Storage;
import org.nestyear.core.emergence.ThermalSums;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.Catalogue;
import org.nestyear.core.species.Sex;
import org.nestyear.core.species.Species;
import org.nestyear.core.winter.ColdRecord;
import org.nestyear.data.NearestWord;

/** Answers when bees leave their cocoons, after a cold store, under one temperature or a station's weather. */
public final class EmergeService {
    /** Bees along each axis of the grid; numerical, enough for a printed quantile. */
    private static final int GRID = 51;
    /** Days of weather after putting out that are read at most; numerical. */
    private static final int LONGEST_SEASON_DAYS = 200;
    /** Longest stay under one temperature; numerical. */
    private static final int LONGEST_DAYS = 400;

    private final Catalogue catalogue;

    public EmergeService(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * The species with this Latin name.
     *
     * @throws Refusal if the catalogue has none
     */
    public Species species(String latinName) {
        return catalogue.find(latinName).orElseThrow(() -> {
            String nearest = NearestWord.find(latinName, catalogue.names());
            return Refusal.usage(
                    "\"" + latinName + "\" is not a species of the catalogue; expected one of "
                            + String.join(", ", catalogue.names()) + ".",
                    nearest == null ? "" : "Maybe \"" + nearest + "\" was meant.");
        });
    }

    /**
     * Answers the question.
     *
     * @throws Refusal if the weather file is wrong or no bee can come out
     */
    public EmergeAnswer answer(EmergeQuestion question) {
        ReadLog read = new ReadLog(question.species().parameters());
        EmergenceSettings female = EmergenceSettings.of(read, Sex.FEMALE);
        EmergenceSettings male = EmergenceSettings.of(read, Sex.MALE);
        Fingerprint print = new Fingerprint(catalogue.fingerprint());
        print.add(question.species().latinName());
        print.add(question.chillDays());
        print.add(question.chillC());
        WeatherSpan days = null;
        double[] hours = null;
        if (question.then() instanceof EmergeQuestion.Steady steady) {
            refuseCold(steady.celsius(), female, male);
            print.add(steady);
        } else if (question.then() instanceof EmergeQuestion.Weather weather) {
            days = WeatherSpan.from(weather.file(), weather.out(), weather.out().plusDays(LONGEST_SEASON_DAYS - 1L));
            hours = days.hoursC(weather.latitudeDeg());
            print.add(weather.out());
            print.add(Arrays.toString(hours));
        }
        boolean cold = question.chillC() < read.value("chill_limit_c");
        ColdRecord record = new ColdRecord(read);
        double chill = cold ? question.chillDays() : 0;
        return new EmergeAnswer(
                question,
                sex(question, female, hours, record.shareNotOut(Sex.FEMALE, chill)),
                sex(question, male, hours, record.shareNotOut(Sex.MALE, chill)),
                days == null ? null : days.last(),
                days == null ? 0 : days.filledDays(),
                read.read(),
                print.digits());
    }

    private static void refuseCold(double celsius, EmergenceSettings female, EmergenceSettings male) {
        if (celsius <= Math.min(female.gateBaseC(), male.gateBaseC())) {
            throw new Refusal(
                    Refusal.Kind.NO_ANSWER,
                    "NY-EMERGE-TOO-COLD",
                    "",
                    "At " + Wording.number(celsius, 1) + " °C no bee comes out: warmth counts only above "
                            + Wording.number(male.gateBaseC(), 1) + " °C for males and "
                            + Wording.number(female.gateBaseC(), 1) + " °C for females.",
                    "");
        }
    }

    private static EmergeAnswer.OneSex sex(
            EmergeQuestion question, EmergenceSettings settings, double @Nullable [] hours, double notEmerging) {
        ThermalSums sums = hours != null
                ? ThermalSums.ofHours(settings, hours)
                : ThermalSums.constant(settings, steady(question).celsius(), LONGEST_DAYS);
        Storage storage = Storage.cold(settings, question.chillC(), question.chillDays(), 0);
        double[] times = new EmergenceClock(settings, GRID).times(sums, storage).clone();
        Arrays.sort(times);
        int inStore = 0;
        while (inStore < times.length && times[inStore] == EmergenceClock.IN_STORE) {
            inStore++;
        }
        double[] out = Arrays.copyOfRange(times, inStore, times.length);
        return new EmergeAnswer.OneSex(
                quantile(out, 0.1),
                quantile(out, 0.5),
                quantile(out, 0.9),
                finite(Arrays.stream(out).average().orElse(Double.NaN)),
                notEmerging,
                (double) inStore / times.length);
    }

    private static EmergeQuestion.Steady steady(EmergeQuestion question) {
        if (question.then() instanceof EmergeQuestion.Steady steady) {
            return steady;
        }
        throw new IllegalStateException("weather was asked for but not read");
    }

    /** The smallest time by which the share is out; bees are many and alike in weight, so no line is drawn between. */
    private static @Nullable Double quantile(double[] sorted, double share) {
        return sorted.length == 0 ? null : finite(sorted[(int) Math.ceil(share * sorted.length) - 1]);
    }

    private static @Nullable Double finite(double value) {
        return Double.isFinite(value) ? value : null;
    }
}

package org.nestyear.app.service;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.brood.BroodOutlook;
import org.nestyear.core.leafcutter.Prepupae;
import org.nestyear.core.leafcutter.Span;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.Species;
import org.nestyear.core.weather.GapFilling;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.DataFault;
import org.nestyear.data.DayOfPlan;
import org.nestyear.data.SeasonFile;
import org.nestyear.data.TextSource;

/**
 * When the young in each nest are ready, by the day it was plugged.
 *
 * @param leafcutter whether they rest as prepupae, or else as adults
 * @param nests in the order told
 */
public record NestDatesAnswer(
        Species species, boolean leafcutter, List<Nest> nests, List<Parameter> basis, String fingerprint) {
    public NestDatesAnswer {
        nests = List.copyOf(nests);
        basis = List.copyOf(basis);
    }

    /**
     * One nest.
     *
     * @param spunEarly day from which its young may have spun (mason bees), or null where that is not told
     * @param spunLate day by which they have
     * @param readyEarly day from which they may be adult (leafcutters: settled prepupae), or null if not in the days looked
     *     at
     * @param readyLate day by which they are, or null if that may not be this year
     * @param coldFrom first day on which cold may begin, after a look has proved them ready, or null likewise and for
     *     leafcutters, part of which may fly the same summer
     */
    public record Nest(
            String name,
            LocalDate plugged,
            @Nullable LocalDate spunEarly,
            @Nullable LocalDate spunLate,
            @Nullable LocalDate readyEarly,
            @Nullable LocalDate readyLate,
            @Nullable LocalDate coldFrom) {}

    /**
     * Works the dates out.
     *
     * @param file the season file, for the bees, the place and past summers
     * @param clock the day it is, for a file that names none
     * @param plugged day on which each nest was plugged, by its name
     * @throws Refusal if the file is wrong, its species unknown, or no past summer is whole
     */
    public static NestDatesAnswer of(Path file, LocalDate clock, Map<String, LocalDate> plugged) {
        SeasonInputs inputs;
        try {
            inputs = SeasonFile.read(TextSource.ofFile(file), new DayOfPlan(null, clock))
                    .inputs();
        } catch (DataFault fault) {
            throw Refusal.of(fault);
        }
        Species species = EitherBee.named(inputs.batches().get(0).species());
        boolean leafcutter = EitherBee.isLeafcutter(species);
        ReadLog read = new ReadLog(species.parameters());
        WeatherRecord known = known(inputs);
        long wait = leafcutter ? 0 : Math.round(read.value("proof_wait_days"));
        List<Nest> nests = new ArrayList<>();
        plugged.forEach((name, day) -> nests.add(
                leafcutter ? prepupae(name, day, known, inputs, read) : adults(name, day, known, inputs, read, wait)));
        Fingerprint print = new Fingerprint(Fingerprint.of(inputs, ""));
        print.add(plugged);
        print.add(read.read());
        return new NestDatesAnswer(species, leafcutter, nests, read.read(), print.digits());
    }

    private static WeatherRecord known(SeasonInputs inputs) {
        WeatherRecord known = inputs.weather().upTo(inputs.today()).orElseThrow(NestDatesAnswer::noSummer);
        try {
            return GapFilling.fill(known).weather();
        } catch (IllegalArgumentException e) {
            throw new Refusal(Refusal.Kind.NO_ANSWER, "NY-WEATHER-GAP", "", e.getMessage() + ".", "");
        }
    }

    private static Refusal noSummer() {
        return new Refusal(
                Refusal.Kind.NO_ANSWER,
                "NY-NESTS-SUMMER",
                "",
                "The weather holds no whole past summer from the plugged day on, so how fast the young grow cannot be told.",
                "Maybe a weather file of a whole past year is missing.");
    }

    private static Nest adults(
            String name, LocalDate day, WeatherRecord known, SeasonInputs inputs, ReadLog read, long wait) {
        BroodOutlook brood =
                BroodOutlook.of(day, known, inputs.site().latitudeDeg(), read).orElseThrow(NestDatesAnswer::noSummer);
        LocalDate adult = brood.adultLate();
        return new Nest(
                name,
                day,
                brood.spunEarly(),
                brood.spunLate(),
                brood.adultEarly(),
                adult,
                adult == null ? null : adult.plusDays(wait));
    }

    private static Nest prepupae(String name, LocalDate day, WeatherRecord known, SeasonInputs inputs, ReadLog read) {
        Span span = Prepupae.days(
                        day,
                        known,
                        inputs.site().latitudeDeg(),
                        read.row("egg_prepupa_base_c"),
                        read.row("egg_prepupa_sum"))
                .orElseThrow(NestDatesAnswer::noSummer);
        LocalDate late = date(day, span.lateDays());
        // A part may fly the same summer, and until that is over nothing is chilled (practice rule): no day is told.
        return new Nest(name, day, null, null, date(day, span.earlyDays()), late, null);
    }

    private static @Nullable LocalDate date(LocalDate day, double days) {
        return Double.isInfinite(days) ? null : day.plusDays((long) days);
    }
}

package org.nestyear.app.service;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.sight.SightCase;
import org.nestyear.core.forage.Flora;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.plan.Planner;
import org.nestyear.core.release.InOrder;
import org.nestyear.core.release.NoAnswerException;
import org.nestyear.core.release.Seen;
import org.nestyear.core.release.SightCheck;
import org.nestyear.core.release.Sighting;
import org.nestyear.core.release.TorchCheck;
import org.nestyear.core.release.TorchCount;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.species.Catalogue;
import org.nestyear.core.species.Species;
import org.nestyear.core.weather.GapFilling;
import org.nestyear.core.weather.WeatherRecord;
import org.nestyear.data.CatalogueFiles;
import org.nestyear.data.DataFault;
import org.nestyear.data.DayOfPlan;
import org.nestyear.data.Season;
import org.nestyear.data.SeasonFile;
import org.nestyear.data.TextSource;

/** Plans a season: reads its file, checks its species against the catalogue, and runs the model. */
public final class PlanService {
    private final Catalogue catalogue;
    private final SeasonPlanner planner;

    public PlanService(Catalogue catalogue, SeasonPlanner planner) {
        this.catalogue = catalogue;
        this.planner = planner;
    }

    /** Plans with the catalogue and the model that come with the program. */
    public static PlanService standard() {
        InOrder allCores = new AllCores();
        Flora flora = CatalogueFiles.flora();
        return new PlanService(catalogue(), (inputs, species) -> Planner.plan(inputs, species, flora, allCores));
    }

    /** The catalogue that comes with the program. */
    public static Catalogue catalogue() {
        return CatalogueFiles.load();
    }

    /**
     * Plans the season in a file on disk; weather files are looked for beside it.
     *
     * @throws Refusal if the file is wrong or no honest answer is possible
     */
    public PlanAnswer planFile(Path file, PlanRequest request) {
        return plan(TextSource.ofFile(file), request);
    }

    /**
     * Plans the season in a text held in memory.
     *
     * @param name name of the season file among the texts
     * @param texts text of each file by the path the season uses for it
     * @throws Refusal if the file is wrong or no honest answer is possible
     */
    public PlanAnswer planTexts(String name, Map<String, String> texts, PlanRequest request) {
        return plan(TextSource.ofTexts(name, texts), request);
    }

    /**
     * Plans the invented season that comes with the program.
     *
     * @throws Refusal if no honest answer is possible on the day asked for
     */
    public PlanAnswer planDemo(PlanRequest request) {
        return plan(Demo.source(), request);
    }

    /**
     * Plans the season in any text.
     *
     * @throws Refusal if it is wrong or no honest answer is possible
     */
    public PlanAnswer plan(TextSource file, PlanRequest request) {
        try {
            Season season = SeasonFile.read(file, new DayOfPlan(request.today(), request.clock()));
            Species species = species(season);
            SeasonInputs inputs =
                    request.goal() == null ? season.inputs() : season.inputs().withGoal(request.goal());
            requireFillable(inputs, season.file());
            Plan plan = planner.plan(inputs, species);
            return new PlanAnswer(inputs, plan, Fingerprint.of(inputs, catalogue.fingerprint()));
        } catch (DataFault fault) {
            throw Refusal.of(fault);
        } catch (NoAnswerException noAnswer) {
            throw Refusal.of(noAnswer);
        }
    }

    /**
     * Says whether what is seen is normal.
     *
     * @param on the day asked about
     * @param released the day they were put out
     * @throws Refusal if the file is wrong, the days are out of order, or no honest answer is possible
     */
    public SightAnswer sighting(Path path, LocalDate clock, LocalDate on, LocalDate released, Seen seen) {
        return sighting(TextSource.ofFile(path), clock, on, released, seen);
    }

    /** The same for the season in any text. */
    public SightAnswer sighting(TextSource file, LocalDate clock, LocalDate on, LocalDate released, Seen seen) {
        return afterRelease(file, clock, on, released, flying -> {
            Sighting sighting = SightCheck.of(
                    flying.inputs(), flying.known(), flying.species().parameters(), flying.read(), released, seen);
            List<Finding> causes = new SightCase(flying.inputs(), flying.species(), sighting).causes();
            Set<Parameter> basis = new LinkedHashSet<>(flying.read().read());
            causes.forEach(cause -> basis.addAll(cause.basis()));
            flying.print().add(seen);
            return new SightAnswer(
                    flying.species(),
                    sighting,
                    causes,
                    List.copyOf(basis),
                    flying.print().digits());
        });
    }

    /**
     * Says how many females nest by a count of occupied tunnels in the dark.
     *
     * @param on the day of the count, the last if there were several
     * @param released the day they were put out
     * @param counts tunnels seen occupied, one number an evening, each 0 or more
     * @throws Refusal if the file is wrong, the days are out of order, or no honest answer is possible
     */
    public TorchAnswer torch(Path path, LocalDate clock, LocalDate on, LocalDate released, List<Integer> counts) {
        return afterRelease(TextSource.ofFile(path), clock, on, released, flying -> {
            TorchCount count = TorchCheck.of(
                    flying.inputs(), flying.known(), flying.species().parameters(), flying.read(), released, counts);
            flying.print().add(counts);
            return new TorchAnswer(
                    flying.species(),
                    flying.inputs().batches().get(0).females(),
                    count,
                    flying.read().read(),
                    flying.print().digits());
        });
    }

    /** A season whose bees are out. */
    private record Flying(SeasonInputs inputs, Species species, WeatherRecord known, ReadLog read, Fingerprint print) {}

    private <T> T afterRelease(
            TextSource file, LocalDate clock, LocalDate on, LocalDate released, Function<Flying, T> answer) {
        try {
            Season season = SeasonFile.read(file, new DayOfPlan(null, clock));
            Species species = species(season);
            SeasonInputs inputs = SightDay.of(season.inputs(), released, on);
            requireFillable(inputs, season.file());
            WeatherRecord known = inputs.weather()
                    .upTo(on)
                    .orElseThrow(() -> new NoAnswerException(
                            "NY-PLAN-NO-WEATHER",
                            "The weather file begins after " + on + ", so nothing is known of the season yet."));
            Fingerprint print = new Fingerprint(catalogue.fingerprint());
            print.add(Fingerprint.of(inputs, ""));
            print.add(released);
            return answer.apply(new Flying(
                    inputs, species, GapFilling.fill(known).weather(), new ReadLog(species.parameters()), print));
        } catch (DataFault fault) {
            throw Refusal.of(fault);
        } catch (NoAnswerException noAnswer) {
            throw Refusal.of(noAnswer);
        }
    }

    private Species species(Season season) {
        List<Batch> batches = season.inputs().batches();
        for (int i = 0; i < batches.size(); i++) {
            if (catalogue.find(batches.get(i).species()).isEmpty()) {
                throw season.unknownSpecies(i, catalogue.names());
            }
            if (!batches.get(0).isAlike(batches.get(i))) {
                throw new Refusal(
                        Refusal.Kind.BAD_INPUT,
                        "NY-PLAN-UNLIKE-BATCHES",
                        season.speciesAt().get(i).toString(),
                        "this batch differs from the first in species or winter; expected bees of one species that"
                                + " wintered together.",
                        "Maybe write a season file for each.");
            }
        }
        return catalogue.find(batches.get(0).species()).orElseThrow();
    }

    /** Refuses gaps that no other year can fill, which the model would not accept. */
    private static void requireFillable(SeasonInputs inputs, String file) {
        WeatherRecord known = inputs.weather().upTo(inputs.today()).orElse(null);
        if (known == null) {
            return;
        }
        try {
            GapFilling.fill(known);
        } catch (IllegalArgumentException e) {
            throw new Refusal(Refusal.Kind.NO_ANSWER, "NY-WEATHER-GAP", file, e.getMessage() + ".", "");
        }
    }
}

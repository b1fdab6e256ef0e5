package org.nestyear.app.service;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.nestyear.core.plan.Plan;
import org.nestyear.core.release.NoAnswerException;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.species.Catalogue;
import org.nestyear.core.species.Species;
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

    /** Plans the season in any text, for those who watch what is read. */
    PlanAnswer plan(TextSource file, PlanRequest request) {
        try {
            Season season = SeasonFile.read(file, new DayOfPlan(request.today(), request.clock()));
            Species species = species(season);
            SeasonInputs inputs =
                    request.goal() == null ? season.inputs() : season.inputs().withGoal(request.goal());
            Plan plan = planner.plan(inputs, species);
            return new PlanAnswer(inputs, plan, Fingerprint.of(inputs, catalogue.fingerprint()));
        } catch (DataFault fault) {
            throw Refusal.of(fault);
        } catch (NoAnswerException noAnswer) {
            throw Refusal.of(noAnswer);
        }
    }

    private Species species(Season season) {
        List<Batch> batches = season.inputs().batches();
        Species first = null;
        for (int i = 0; i < batches.size(); i++) {
            int batch = i;
            Species species = catalogue
                    .find(batches.get(i).species())
                    .orElseThrow(() -> season.unknownSpecies(batch, catalogue.names()));
            if (first == null) {
                first = species;
            } else if (!first.equals(species)) {
                throw new Refusal(
                        Refusal.Kind.BAD_INPUT,
                        "NY-PLAN-TWO-SPECIES",
                        season.speciesAt().get(i).toString(),
                        "the batches are of two species, " + first.latinName() + " and " + species.latinName()
                                + "; expected one species in a plan.",
                        "Maybe write a season file for each.");
            }
        }
        if (first == null) {
            throw new IllegalStateException("a season without a batch was read");
        }
        return first;
    }
}

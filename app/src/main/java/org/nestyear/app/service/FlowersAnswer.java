package org.nestyear.app.service;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.forage.EvenLine;
import org.nestyear.core.forage.Flora;
import org.nestyear.core.forage.FlowerLine;
import org.nestyear.core.forage.Forage;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.species.Species;
import org.nestyear.data.CatalogueFiles;
import org.nestyear.data.DataFault;
import org.nestyear.data.DayOfPlan;
import org.nestyear.data.Season;
import org.nestyear.data.SeasonFile;
import org.nestyear.data.TextSource;

/**
 * Flowers in reach against the cells of a season.
 *
 * @param species the bees
 * @param inputs the season as read
 * @param release the date of release that the cells were reckoned for, or null where the keeper told the cells
 * @param forage the weeks, the gaps and what would close them
 * @param undated plants with cover that do not count, because their bloom hangs on weather that was not run
 * @param fingerprint sixteen characters that change with the question, the season, the catalogue or the version
 */
public record FlowersAnswer(
        Species species,
        SeasonInputs inputs,
        @Nullable LocalDate release,
        Forage forage,
        List<String> undated,
        String fingerprint) {
    private static final String LEAFCUTTER_GENUS = "Megachile";

    public FlowersAnswer {
        undated = List.copyOf(undated);
    }

    /**
     * Answers the question.
     *
     * @throws Refusal if the file is wrong, no plant has cover in reach, the cells of these bees cannot be reckoned, or no
     *     honest plan is possible
     */
    public static FlowersAnswer of(FlowersQuestion question) {
        FlowersAnswer answer = question.told() == null ? planned(question) : told(question, question.told());
        if (!answer.forage().isTold()) {
            throw new Refusal(
                    Refusal.Kind.NO_ANSWER,
                    "NY-FLOWERS-NO-COVER",
                    question.file().toString(),
                    "no [[plant]] with flowers for bees has a cover_m2 within reach, so there is nothing to hold against"
                            + " the cells; expected cover_m2, the area of its crowns or bed.",
                    "");
        }
        return answer;
    }

    private static FlowersAnswer planned(FlowersQuestion question) {
        Season season = season(question);
        if (isLeafcutter(season.inputs())) {
            throw new Refusal(
                    Refusal.Kind.NO_ANSWER,
                    "NY-FLOWERS-NO-CELLS",
                    season.speciesAt().get(0).toString(),
                    "the cells of leafcutter bees cannot be reckoned by this version; expected --cells, --from and --to,"
                            + " your own guess of the cells a day and the days of nesting.",
                    "");
        }
        PlanAnswer plan = PlanService.standard().planFile(question.file(), question.request());
        Forage forage = plan.plan().forage();
        if (forage == null) {
            throw new IllegalStateException("the planner did not hold flowers against cells");
        }
        return new FlowersAnswer(
                plan.plan().species(),
                plan.inputs(),
                plan.plan().release().bestDate(),
                forage,
                List.of(),
                print(question, plan.fingerprint()));
    }

    private static FlowersAnswer told(FlowersQuestion question, FlowersQuestion.ToldCells cells) {
        Season season = season(question);
        SeasonInputs inputs = season.inputs();
        FlowerLine line = EvenLine.of(inputs.plants(), inputs.community(), cells.from(), cells.to(), cells.cells());
        Flora flora = CatalogueFiles.flora();
        return new FlowersAnswer(
                species(season),
                inputs,
                null,
                Forage.of(inputs.plants(), inputs.site(), flora, isLeafcutter(inputs), line),
                inputs.plants().stream()
                        .filter(plant -> plant.coverM2() > 0 && !EvenLine.isDated(plant))
                        .map(Plant::name)
                        .toList(),
                print(question, Fingerprint.of(inputs, "")));
    }

    private static Season season(FlowersQuestion question) {
        try {
            return SeasonFile.read(
                    TextSource.ofFile(question.file()),
                    new DayOfPlan(question.request().today(), question.request().clock()));
        } catch (DataFault fault) {
            throw Refusal.of(fault);
        }
    }

    private static boolean isLeafcutter(SeasonInputs inputs) {
        return inputs.batches().get(0).species().startsWith(LEAFCUTTER_GENUS);
    }

    private static Species species(Season season) {
        String name = season.inputs().batches().get(0).species();
        List<Species> all = Stream.concat(
                        PlanService.catalogue().species().stream(), CatalogueFiles.leafcutters().species().stream())
                .toList();
        Optional<Species> found = all.stream()
                .filter(each -> each.latinName().equalsIgnoreCase(name))
                .findFirst();
        return found.orElseThrow(() -> Refusal.of(
                season.unknownSpecies(0, all.stream().map(Species::latinName).toList())));
    }

    private static String print(FlowersQuestion question, String season) {
        Fingerprint print = new Fingerprint(CatalogueFiles.floraFingerprint());
        print.add(season);
        print.add(String.valueOf(question.told()));
        return print.digits();
    }

    /** True when the keeper told the other bloom, so that it counts. */
    public boolean countsOtherBloom() {
        return inputs.community() != null;
    }

    /** True when the bees want leaves. */
    public boolean wantsLeaves() {
        return isLeafcutter(inputs);
    }
}

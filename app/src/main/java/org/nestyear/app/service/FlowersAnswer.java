package org.nestyear.app.service;

import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.forage.Flora;
import org.nestyear.core.forage.FlowerLine;
import org.nestyear.core.forage.Forage;
import org.nestyear.core.forage.ToldLine;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
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
 * @param cells where the cells come from
 * @param release the date of release or the first day of nesting that the cells were reckoned for, or null where told
 * @param forage the weeks, the gaps and what would close them
 * @param undated plants with cover that do not count, because their bloom hangs on weather that was not run
 * @param spellings for plants that are not in the list the nearest names that are, as advice
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the season, the catalogue or the version
 */
public record FlowersAnswer(
        Species species,
        SeasonInputs inputs,
        Cells cells,
        @Nullable LocalDate release,
        Forage forage,
        List<String> undated,
        List<String> spellings,
        List<Parameter> basis,
        String fingerprint) {
    private static final String LEAFCUTTER_GENUS = "Megachile";

    /** Where the cells come from. */
    public enum Cells {
        /** From the plan. */
        PLAN,
        /** From the number of leafcutters and the day they begin. */
        LEAFCUTTERS,
        /** Told by the keeper. */
        TOLD;

        /** The word for it, in lower case. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public FlowersAnswer {
        undated = List.copyOf(undated);
        spellings = List.copyOf(spellings);
        basis = List.copyOf(basis);
    }

    /**
     * Answers the question.
     *
     * @throws Refusal if the file is wrong, no plant has cover in reach, the cells of these bees cannot be reckoned, or no
     *     honest plan is possible
     */
    public static FlowersAnswer of(FlowersQuestion question) {
        boolean planned = question.told() == null && question.nesting() == null;
        FlowersAnswer answer = planned ? planned(question) : told(question);
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
                    "leafcutter bees are not planned by this version; expected --from, the day they begin to nest, with"
                            + " --cells and --to beside it if you know their cells.",
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
                Cells.PLAN,
                plan.plan().release().bestDate(),
                forage,
                List.of(),
                spellings(forage, CatalogueFiles.flora()),
                forage.basis(),
                print(question, plan.fingerprint()));
    }

    private static FlowersAnswer told(FlowersQuestion question) {
        Season season = season(question);
        SeasonInputs inputs = season.inputs();
        Species species = species(season);
        Flora flora = CatalogueFiles.flora();
        ReadLog numbers = new ReadLog(flora.numbers());
        ReadLog bees = new ReadLog(species.parameters());
        FlowersQuestion.ToldCells told = question.told();
        FlowerLine line = told == null
                ? leafcutters(question, inputs, numbers, bees)
                : ToldLine.even(inputs.plants(), inputs.community(), told.from(), told.to(), told.cells());
        Forage forage = Forage.of(inputs.plants(), inputs.site(), flora, isLeafcutter(inputs), line);
        Set<Parameter> basis = new LinkedHashSet<>(bees.read());
        basis.addAll(numbers.read());
        basis.addAll(forage.basis());
        return new FlowersAnswer(
                species,
                inputs,
                told == null ? Cells.LEAFCUTTERS : Cells.TOLD,
                question.nesting(),
                forage,
                inputs.plants().stream()
                        .filter(plant -> plant.coverM2() > 0 && !ToldLine.isDated(plant))
                        .map(Plant::name)
                        .toList(),
                spellings(forage, flora),
                List.copyOf(basis),
                print(question, Fingerprint.of(inputs, "")));
    }

    private static List<String> spellings(Forage forage, Flora flora) {
        List<String> names = flora.plants().stream()
                .flatMap(
                        plant -> Stream.concat(Stream.of(plant.name(), plant.latinName()), plant.otherNames().stream()))
                .toList();
        return forage.plants().stream()
                .filter(told -> told.known() == null)
                .map(told -> Spelling.advice(
                        Objects.requireNonNullElse(
                                told.plant().stand().species(), told.plant().name()),
                        names))
                .filter(advice -> !advice.isEmpty())
                .toList();
    }

    private static FlowerLine leafcutters(
            FlowersQuestion question, SeasonInputs inputs, ReadLog numbers, ReadLog bees) {
        if (!isLeafcutter(inputs)) {
            throw Refusal.usage(
                    "--from is given without --cells and --to; expected all three, or --from alone for leafcutters.",
                    "");
        }
        return ToldLine.ofLeafcutters(
                inputs.plants(),
                inputs.community(),
                Objects.requireNonNull(question.nesting()),
                inputs.batches().stream().mapToInt(Batch::females).sum(),
                numbers,
                bees);
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
        print.add(String.valueOf(question.nesting()));
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

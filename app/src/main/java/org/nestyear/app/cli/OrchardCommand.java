package org.nestyear.app.cli;

import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.EitherBee;
import org.nestyear.app.service.OrchardAnswer;
import org.nestyear.app.service.OrchardQuestion;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.service.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "orchard", description = "Say how many bees and tunnels an orchard wants, where a rate is published.")
final class OrchardCommand implements Callable<Integer> {
    private static final int MOST_TREES = 10_000_000;
    private static final double MOST_M2 = 1e9;

    private final Surroundings surroundings;

    @Option(
            names = "--crop",
            required = true,
            paramLabel = "CROP",
            description = "In a word, such as apple or alfalfa.")
    String crop = "";

    @Option(names = "--area", paramLabel = "AREA", description = "Its area, such as 0.5ha, 2acre or 300m2.")
    @Nullable
    String area;

    @Option(names = "--trees", paramLabel = "N", description = "Its trees, instead of the area.")
    @Nullable
    String trees;

    @Option(
            names = "--spacing",
            paramLabel = "SIDES",
            description = "Distance of rows and of trees, such as 5x4m, with --trees.")
    @Nullable
    String spacing;

    @Option(
            names = "--species",
            paramLabel = "NAME",
            description = "Latin name, in quotes (default: \"Osmia lignaria\").")
    String species = "Osmia lignaria";

    @Mixin
    AnswerOptions options = new AnswerOptions();

    OrchardCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        UnitSystem units = options.unitSystem();
        String word = crop.strip().toLowerCase(Locale.ROOT);
        if (!word.matches("\\p{L}[\\p{L} -]{0,40}")) {
            throw Refusal.usage("--crop is \"" + crop + "\"; expected a crop in a word, such as apple.", "");
        }
        OrchardAnswer answer = OrchardAnswer.of(question(word));
        Wording words = new Wording(units, surroundings.today().getYear());
        options.print(surroundings, () -> OrchardJson.of(answer), () -> OrchardText.of(answer, words, units));
        return ExitCode.ANSWERED;
    }

    private OrchardQuestion question(String word) {
        if (area != null && trees == null && spacing == null) {
            double metres = Amounts.squareMetres("--area", area);
            if (metres > MOST_M2) {
                throw Refusal.usage("--area is \"" + area + "\"; expected at most 100,000 ha.", "");
            }
            return new OrchardQuestion(EitherBee.named(species), word, metres, null, null);
        }
        if (area == null && trees != null) {
            Double each = spacing == null ? null : Amounts.rectangleOrArea("--spacing", spacing);
            if (each != null && (each < 0.5 || each > 1000)) {
                throw Refusal.usage(
                        "--spacing is \"" + spacing + "\"; expected from 0.5 to 1,000 m2 for each tree, such as 5x4m.",
                        "");
            }
            return new OrchardQuestion(
                    EitherBee.named(species), word, null, Amounts.whole("--trees", trees, 1, MOST_TREES), each);
        }
        throw Refusal.usage(
                "it is not clear how large the orchard is; expected either --area AREA, or --trees N with or without"
                        + " --spacing SIDES.",
                "");
    }
}

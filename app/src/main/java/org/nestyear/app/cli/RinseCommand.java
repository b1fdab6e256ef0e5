package org.nestyear.app.cli;

import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.RinseAnswer;
import org.nestyear.app.service.RinseQuestion;
import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.service.Wording;
import org.nestyear.core.hygiene.Mixture;
import org.nestyear.core.hygiene.RinseItem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "rinse",
        description = "Say how strong a bleach rinse is, whether it may be used on this, and with what care.")
final class RinseCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(
            names = "--item",
            required = true,
            paramLabel = "ITEM",
            description = "gear, cocoon (of mason bees), leaf-cell or guest.")
    @Nullable
    String item;

    @Option(
            names = "--label-percent",
            required = true,
            paramLabel = "P",
            description = "Sodium hypochlorite by the label, per cent, such as 5.25.")
    String label = "";

    @Option(names = "--bleach", paramLabel = "QUANTITY", description = "Bleach, such as 0.25cup or 60ml.")
    @Nullable
    String bleach;

    @Option(
            names = "--water",
            required = true,
            paramLabel = "QUANTITY",
            description = "Water it is poured into, such as 1gal or 4l.")
    String water = "";

    @Option(names = "--target-ppm", paramLabel = "PPM", description = "Strength wanted, instead of --bleach.")
    @Nullable
    String target;

    @Option(names = "--bottle-months", paramLabel = "MONTHS", description = "Age of the bottle, if known.")
    @Nullable
    String months;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    RinseCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        RinseItem what = Objects.requireNonNull(Arguments.word("--item", item, RinseItem.values(), RinseItem::word));
        UnitSystem units = options.unitSystem();
        Double wanted = target == null ? null : Arguments.number("--target-ppm", target, 1, 150_000, "ppm");
        RinseAnswer answer = RinseAnswer.of(new RinseQuestion(
                what,
                mixture(wanted),
                wanted,
                months == null ? null : Arguments.number("--bottle-months", months, 0, 600, "months")));
        options.print(surroundings, () -> RinseJson.of(answer), () -> RinseText.of(answer, units));
        return ExitCode.ANSWERED;
    }

    private Mixture mixture(@Nullable Double wanted) {
        double percent = Arguments.number("--label-percent", label, 1, 15, "per cent");
        double waterMl = Amounts.millilitres("--water", water);
        if (bleach != null && wanted == null) {
            return new Mixture(percent, Amounts.millilitres("--bleach", bleach), waterMl);
        }
        if (bleach == null && wanted != null) {
            double bottle = new Mixture(percent, 1, 0).ppm();
            if (wanted >= bottle) {
                throw Refusal.usage(
                        "--target-ppm is " + Wording.number(wanted, 0) + ", but the bottle itself holds "
                                + Wording.number(bottle, 0) + " ppm; expected less than that.",
                        "");
            }
            return Mixture.ofStrength(percent, wanted, waterMl);
        }
        throw Refusal.usage(
                "it is not clear what is mixed; expected either --bleach QUANTITY or --target-ppm PPM.", "");
    }
}

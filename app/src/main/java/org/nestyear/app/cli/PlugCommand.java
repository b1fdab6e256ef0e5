package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.PartOfYear;
import org.nestyear.app.service.PlugAnswer;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.Spelling;
import org.nestyear.core.guest.CardQuestion;
import org.nestyear.core.guest.Sign;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "plug",
        description = "Say who is likely to be in a tunnel, and what to do; without answers print the whole card.")
final class PlugCommand implements Callable<Integer> {
    private final Surroundings surroundings;

    @Option(names = "--plug", paramLabel = "WORD", description = "What closes the tunnel; the words are on the card.")
    @Nullable
    String plug;

    @Option(names = "--wall", paramLabel = "WORD", description = "What the walls between cells are made of.")
    @Nullable
    String wall;

    @Option(names = "--contents", paramLabel = "WORD", description = "What lies in the cell.")
    @Nullable
    String contents;

    @Option(names = "--frass", paramLabel = "WORD", description = "What the droppings look like.")
    @Nullable
    String frass;

    @Option(names = "--holes", paramLabel = "WORD", description = "Holes in plug or cocoon.")
    @Nullable
    String holes;

    @Option(names = "--when", paramLabel = "SEASON", description = "spring, summer, autumn or winter.")
    @Nullable
    String when;

    @Mixin
    AnswerOptions options = new AnswerOptions();

    PlugCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Integer call() {
        options.unitSystem();
        PartOfYear part = Arguments.word("--when", when, PartOfYear.values(), PartOfYear::word);
        Map<CardQuestion, String> given = new EnumMap<>(CardQuestion.class);
        List<Sign> signs = PlugAnswer.signs();
        take(given, signs, CardQuestion.PLUG, plug);
        take(given, signs, CardQuestion.WALL, wall);
        take(given, signs, CardQuestion.CONTENTS, contents);
        take(given, signs, CardQuestion.FRASS, frass);
        take(given, signs, CardQuestion.HOLES, holes);
        PlugAnswer answer = PlugAnswer.of(given, part);
        options.printLaid(surroundings, () -> PlugJson.of(answer), () -> PlugText.of(answer));
        return ExitCode.ANSWERED;
    }

    private static void take(
            Map<CardQuestion, String> given, List<Sign> signs, CardQuestion question, @Nullable String word) {
        if (word == null) {
            return;
        }
        List<String> known = new ArrayList<>();
        signs.stream().filter(sign -> sign.question() == question).forEach(sign -> known.add(sign.word()));
        if (!known.contains(word)) {
            throw Refusal.usage(
                    "--" + question.word() + " is \"" + word + "\"; expected one of " + String.join(", ", known) + ".",
                    Spelling.advice(word, known));
        }
        given.put(question, word);
    }
}

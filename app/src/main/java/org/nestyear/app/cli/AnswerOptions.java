package org.nestyear.app.cli;

import java.util.Objects;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.cli.Surroundings.Ear;
import org.nestyear.app.service.UnitSystem;
import picocli.CommandLine.Option;

/** Options that every answering command has. */
final class AnswerOptions {
    @Option(names = "--json", description = "Print one JSON object instead of text; its numbers are always metric.")
    boolean json;

    @Option(names = "--units", paramLabel = "UNITS", description = "metric (default) or us.")
    @Nullable
    String units;

    UnitSystem unitSystem() {
        return Objects.requireNonNullElse(
                Arguments.word("--units", units, UnitSystem.values(), UnitSystem::word), UnitSystem.METRIC);
    }

    /** Prints the answer in the form asked for, each line of the text set as a paragraph. */
    void print(Surroundings surroundings, Supplier<String> asJson, Supplier<String> asText) {
        give(surroundings, asJson, asText, Page::set);
    }

    /** Prints the answer in the form asked for, the text as it is. */
    void printPage(Surroundings surroundings, Supplier<String> asJson, Supplier<String> asPage) {
        give(surroundings, asJson, asPage, page -> page);
    }

    /** Prints the answer in the form asked for, the text as the page has laid it out. */
    void printLaid(Surroundings surroundings, Supplier<String> asJson, Supplier<Page> asPage) {
        Ear ear = surroundings.ear();
        if (ear != null) {
            ear.hear(asPage.get().lines(), asJson.get());
        } else {
            printPage(surroundings, asJson, () -> asPage.get().toString());
        }
    }

    private void give(
            Surroundings surroundings,
            Supplier<String> asJson,
            Supplier<String> asText,
            UnaryOperator<String> setting) {
        Ear ear = surroundings.ear();
        if (ear != null) {
            ear.hear(asText.get().lines().toList(), asJson.get());
        } else {
            surroundings.out().print(json ? asJson.get() : setting.apply(asText.get()));
        }
    }
}

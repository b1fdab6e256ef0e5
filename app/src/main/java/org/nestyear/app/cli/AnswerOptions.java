package org.nestyear.app.cli;

import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
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
        printPage(surroundings, asJson, () -> Page.set(asText.get()));
    }

    /** Prints the answer in the form asked for, the text as it is. */
    void printPage(Surroundings surroundings, Supplier<String> asJson, Supplier<String> asPage) {
        surroundings.out().print(json ? asJson.get() : asPage.get());
    }
}

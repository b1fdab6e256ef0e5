package org.nestyear.app.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.Refusal;
import picocli.CommandLine.Option;

/** Options that name a run of days in a table of daily weather. */
final class DaysOfWeather {
    @Option(names = "--weather", paramLabel = "FILE", description = "Daily weather of a station.")
    @Nullable
    Path weather;

    @Option(names = "--from", paramLabel = "DATE", description = "First day, such as 2015-01-01.")
    @Nullable
    String first;

    @Option(names = "--to", paramLabel = "DATE", description = "Last day.")
    @Nullable
    String last;

    /** True when none of the three is given. */
    boolean isUntold() {
        return weather == null && first == null && last == null;
    }

    /** True when all three are given. */
    boolean isWhole() {
        return weather != null && first != null && last != null;
    }

    Path file() {
        return given("--weather FILE", weather);
    }

    LocalDate from() {
        return Arguments.date("--from", given("--from DATE", first));
    }

    /** The last day, which is not before the first. */
    LocalDate to() {
        LocalDate to = Arguments.date("--to", given("--to DATE", last));
        if (to.isBefore(from())) {
            throw Refusal.usage("--to is " + to + ", before --from " + from() + "; expected a later day.", "");
        }
        return to;
    }

    private static <T> T given(String option, @Nullable T value) {
        if (value == null) {
            throw Refusal.usage(option + " is missing; expected --weather FILE, --from DATE and --to DATE.", "");
        }
        return value;
    }
}

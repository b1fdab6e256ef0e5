package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wrong arguments end in exit code 2 with one sentence and an advice line; help and version end in 0. */
class UsageTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            plam x.toml               | nestyear: "plam" is not a command of nestyear; expected one of | Maybe "plan" was meant.
            plan                      | nestyear: neither a file nor --site is given; expected one of them. |
            demo --jsn                | nestyear: "--jsn" is not an option of nestyear demo; expected one of | Maybe "--json" was meant.
            demo now                  | nestyear: "now" is not an argument of nestyear demo; expected nothing there. | Maybe see nestyear demo --help.
            demo --aim honey          | nestyear: --aim is "honey"; expected one of both, brood, bloom. |
            demo --aim brod           | nestyear: --aim is "brod"; expected one of both, brood, bloom. | Maybe "brood" was meant.
            demo --today 10.3.2015    | nestyear: --today is "10.3.2015"; expected a date such as 2015-04-20. |
            demo --units imperial     | nestyear: --units is "imperial"; expected one of metric, us. |
            demo --why put-out --json | nestyear: --why and --json are both given; expected one of them. | Maybe leave --why out: the JSON object holds the reasons of every job.
            demo --why                | nestyear: nestyear demo lacks something; expected --why JOB (Show one job with the numbers behind it). | Maybe see nestyear demo --help.
            sun --lat 40 --lon -74    | nestyear: nestyear sun lacks something; expected --at TIME (Date and time with offset, such as 2015-04-20T12:00:00-04:00). | Maybe see nestyear sun --help.
            sun --lat 400 --lon 0 --at 2015-04-20T12:00:00Z | nestyear: --lat is 400; expected a number from -90 to 90 degrees north. |
            sun --lat 40,7 --lon 0 --at 2015-04-20T12:00:00Z | nestyear: --lat is "40,7"; expected a number from -90 to 90 degrees north. | Maybe write the number with a point, not a comma.
            sun --lat 40 --lon 0 --at 2015-04-20T12:00:00 | nestyear: --at is "2015-04-20T12:00:00"; expected a date and time with its offset, such as 2015-04-20T12:00:00-04:00. | Maybe the offset from UTC is missing: add Z for UTC itself.
            """)
    void wrongArgumentsAreNamed(String arguments, String sentence, String advice) {
        Run run = Run.of(arguments.split(" ", -1));

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        List<String> lines = run.err().lines().toList();
        assertThat(lines).hasSize(advice == null ? 1 : 2);
        assertThat(lines.get(0)).startsWith(sentence).endsWith(". [NY-USAGE]");
        if (advice != null) {
            assertThat(lines.get(1)).isEqualTo(advice);
        }
    }

    @Test
    void withoutACommandNothingIsGuessed() {
        Run run = Run.of();

        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("no command is given").contains("Maybe see nestyear --help.");
    }

    @Test
    void helpGoesToStandardOutput() {
        assertThat(Run.of("--help").out())
                .contains(
                        "plan",
                        "demo",
                        "check-file",
                        "bloom",
                        "emerge",
                        "sun",
                        "warm",
                        "winter",
                        "normal",
                        "torch",
                        "nests",
                        "facing",
                        "flowers",
                        "serve",
                        "Exit codes")
                .contains("degree-days", "chill", "interval", "sample", "rinse", "mud", "range", "trend", "tunnels")
                .contains("orchard", "sex-count", "years")
                .contains("losses", "plug", "enemies")
                .contains("tables", "enter", "entries", "correct", "take-out", "undo", "done", "photo")
                .contains("next-year", "spring", "import", "export", "backup", "restore");
        assertThat(Run.of("--help").exit()).isZero();
        assertThat(Run.of("plan", "--help").out()).contains("FILE", "--aim", "--json");
        assertThat(Run.of("plan", "--help").exit()).isZero();
    }

    @Test
    void theVersionIsTold() {
        assertThat(Run.of("--version")).isEqualTo(new Run(0, "nestyear 0.1.0\n", ""));
    }

    @Test
    void theServerGetsItsWordsAsTheyAre() {
        assertThat(Run.of("serve", "--port", "0", "--help")).isEqualTo(new Run(0, "serving --port 0 --help\n", ""));
    }
}

package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class IntervalCommandTest {
    /** Newcombe (1998a) Table I, 15/148; Newcombe (1998b) Table II, 56/70 less 48/80, method 10. */
    @Test
    void publishedIntervalsComeOut() {
        JsonNode one = json("interval", "--found", "15", "--of", "148", "--json");
        assertThat(one.at("/wilson/low").asDouble()).isEqualTo(0.0624, within(5e-5));
        assertThat(one.at("/wilson/high").asDouble()).isEqualTo(0.1605, within(5e-5));
        assertThat(one.at("/clopper_pearson/low").asDouble()).isEqualTo(0.0578, within(5e-5));
        assertThat(one.at("/clopper_pearson/high").asDouble()).isEqualTo(0.1617, within(5e-5));
        assertThat(one.get("newcombe_difference").isNull()).isTrue();
        assertThat(one.get("clusters").isNull()).isTrue();
        assertThat(one.get("none_found_upper").isNull()).isTrue();

        JsonNode two = json("interval", "--found", "56", "--of", "70", "--against", "48/80", "--json");
        assertThat(two.at("/newcombe_difference/low").asDouble()).isEqualTo(0.0524, within(5e-5));
        assertThat(two.at("/newcombe_difference/high").asDouble()).isEqualTo(0.3339, within(5e-5));
    }

    @Test
    void levelsMayBeWrittenInThreeWays() {
        String share = Run.of("interval", "--found", "3", "--of", "40", "--level", "0.9", "--json")
                .out();
        assertThat(Run.of("interval", "--found", "3", "--of", "40", "--level", "90", "--json")
                        .out())
                .isEqualTo(share);
        assertThat(Run.of("interval", "--found", "3", "--of", "40", "--level", "90%", "--json")
                        .out())
                .isEqualTo(share);
    }

    @Test
    void nestsWidenTheInterval() {
        JsonNode plain = json("interval", "--found", "7", "--of", "34", "--json");
        JsonNode nests = json(
                "interval",
                "--nest",
                "2/7",
                "--nest",
                "0/6",
                "--nest",
                "4/6",
                "--nest",
                "1/8",
                "--nest",
                "0/7",
                "--json");
        assertThat(nests.get("found").asInt()).isEqualTo(7);
        assertThat(nests.get("of").asInt()).isEqualTo(34);
        assertThat(nests.at("/clusters/design_effect").asDouble()).isGreaterThan(1.5);
        assertThat(nests.at("/wilson/high").asDouble())
                .isGreaterThan(plain.at("/wilson/high").asDouble() + 0.1);
    }

    @Test
    void noneFoundIsSaidInWords() {
        Run run = Run.of("interval", "--nest", "0/10", "--nest", "0/10");
        String text = run.out().replaceAll("\\s+", " ");
        assertThat(run.exit()).isZero();
        assertThat(text)
                .startsWith("0 of 20 (0.0 %). With 95 % confidence the true share lies between 0.0 and 16.1 %")
                .contains("None found does not mean none there: with 95 % confidence fewer than 13.9 % are affected.")
                .contains("each of the 2 nests as one observation, fewer than 77.6 % of nests")
                .contains("How well this is known:");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void littleIsSaidToBeLittle() {
        assertThat(Run.of("interval", "--nest", "2/7", "--nest", "0/7").out().replaceAll("\\s+", " "))
                .contains("as much as a single independent one: so few nests say almost nothing of the others.");
        assertThat(Run.of("interval", "--found", "1", "--of", "1000000", "--level", "99.999")
                        .out())
                .startsWith("1 of 1,000,000 (0.00010 %). With 99.999 % confidence");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            interval --found 3 | it is not clear what was counted; expected either --found K and --of N, or --nest K/N for each nest.
            interval --found 3 --of 10 --nest 1/2 | it is not clear what was counted
            interval --found 12 --of 10 | --found is "12"; expected no more found than looked at.
            interval --found -1 --of 10 | --found is "-1"; expected a whole number from 0 to 100,000,000.
            interval --found 2 --of 0 | --of is "0"; expected a whole number from 1 to 100,000,000.
            interval --found 2.5 --of 10 | --found is "2.5"; expected a whole number from 0 to 100,000,000.
            interval --found 2 --of 10 --level 100 | --level is "100"; expected a share above 0 and below 100 %, such as 5%, 5 or 0.05.
            interval --found 2 --of 10 --level high | --level is "high"; expected a share
            interval --found 2 --of 10 --against 3 | --against is "3"; expected found and looked at with a slash between, such as 3/40.
            interval --found 2 --of 10 --against 3/0 | --against is "3/0"; expected one or more looked at.
            interval --nest 1/7 | --nest is given once; expected two nests or more
            interval --nest 1/7 --nest 9/7 | --nest is "9/7"; expected no more found than looked at.
            """)
    void wrongTalliesAreNamed(String arguments, String sentence) {
        Run run = Run.of(arguments.split(" ", -1));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("nestyear: " + sentence).contains(" [NY-USAGE]");
        assertThat(run.err().lines().count()).isLessThanOrEqualTo(2);
    }

    private static JsonNode json(String... arguments) {
        Run run = Run.of(arguments);
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("interval.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}

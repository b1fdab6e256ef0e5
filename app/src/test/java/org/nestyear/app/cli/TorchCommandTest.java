package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nestyear.app.JsonSchemas;

/** The command {@code torch} on the demo's invented season. */
class TorchCommandTest {
    @TempDir
    Path folder;

    private String season = "";

    @BeforeEach
    void writeTheDemo() {
        Path into = folder.resolve("my-season");
        assertThat(Run.of("demo", "--write", into.toString()).exit()).isZero();
        season = into.resolve("tansy-lane.toml").toString();
    }

    private Run count(String counted) {
        return Run.of("torch", season, "--released", "2015-04-14", "--on", "2015-05-05", "--counted", counted);
    }

    @Test
    void aCountIsAnswered() {
        Run run = Run.of(
                "torch", season, "--released", "2015-04-14", "--on", "2015-05-05", "--counted", "20,24", "--json");
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("torch.schema.json", run.out());
        assertThat(count("20,24").out().replace('\n', ' '))
                .contains("females are nesting", "you counted 20, 24", "this is as it should be", "touch nothing");
        assertThat(count("2").out().replace('\n', ' ')).contains("fewer than in nine cases of ten");
        assertThat(count("70").out().replace('\n', ' ')).contains("more than in nine cases of ten");
    }

    @Test
    void wrongCountsAreRefused() {
        assertThat(count("-1").exit()).isEqualTo(2);
        assertThat(count("many").err()).contains("--counted is \"many\"; expected");
        assertThat(count("200").exit()).isEqualTo(3);
        assertThat(count("200").err()).contains("NY-TORCH-COUNT");
        Run early = Run.of("torch", season, "--released", "2015-05-06", "--on", "2015-05-05", "--counted", "3");
        assertThat(early.exit()).isEqualTo(2);
    }
}

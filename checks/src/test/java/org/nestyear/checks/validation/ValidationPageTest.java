package org.nestyear.checks.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Repository;
import org.nestyear.checks.SharedData;

/**
 * {@code docs/validation.md} is what the code computes today. To write it anew: {@code mvn test -pl checks -am
 * -Dtest=ValidationPageTest -Dsurefire.failIfNoSpecifiedTests=false -Dnestyear.write=true}. Where the reference data are
 * absent the test is skipped, and the report counts it.
 */
class ValidationPageTest {
    @Test
    void thePageSaysWhatTheCodeComputes() throws IOException {
        SharedData.folder();
        Path file = Repository.root().resolve("docs/validation.md");
        String page = new ValidationPage().write();
        if (Boolean.getBoolean("nestyear.write")) {
            Files.writeString(file, page);
        }
        assertThat(Files.readString(file)).isEqualTo(page);
        assertThat(page).contains("turned down").doesNotContain("NaN");
    }
}

package org.nestyear.checks.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Repository;
import org.nestyear.checks.SharedData;

/**
 * {@code docs/validation.md} is what the code computes today. To write it anew: {@code mvn test -pl checks -am
 * -Dtest=ValidationPageTest -Dsurefire.failIfNoSpecifiedTests=false -Dnestyear.write=true}. Where the reference data are
 * absent that is skipped, and the report counts it; that nobody has edited the page is checked everywhere, against the
 * hash written with it.
 */
class ValidationPageTest {
    private static final Path PAGE = Repository.root().resolve("docs/validation.md");
    private static final Path HASH = Repository.root().resolve("docs/validation.md.sha256");

    @Test
    void thePageSaysWhatTheCodeComputes() throws IOException {
        SharedData.folder();
        String page = new ValidationPage().write();
        if (Boolean.getBoolean("nestyear.write")) {
            Files.writeString(PAGE, page);
            Files.writeString(HASH, hash(page) + "  validation.md\n");
        }
        assertThat(Files.readString(PAGE)).isEqualTo(page);
        assertThat(page).contains("turned down").doesNotContain("NaN");
    }

    /** The form that {@code sha256sum -c} reads. */
    @Test
    void thePageIsTheOneThatWasGenerated() throws IOException {
        assertThat(Files.readString(HASH)).isEqualTo(hash(Files.readString(PAGE)) + "  validation.md\n");
    }

    private static String hash(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}

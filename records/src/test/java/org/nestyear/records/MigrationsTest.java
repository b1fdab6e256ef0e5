package org.nestyear.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A migration that anybody may have run is never edited: the tables of two keepers would differ under one number. The list
 * of checksums grows by a line with each new file.
 */
class MigrationsTest {
    private static final Path FILES = Path.of("src/main/resources/db/migration");
    private static final Path LIST = Path.of("src/test/resources/schema/migrations.sha256");

    @Test
    void noMigrationWasEditedAndEveryOneIsListed() throws IOException {
        Map<String, String> listed = Files.readAllLines(LIST).stream()
                .map(line -> line.split("  ", 2))
                .collect(Collectors.toMap(part -> part[1], part -> part[0], (a, b) -> a, TreeMap::new));
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> files = Files.list(FILES)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                found.put(file.getFileName().toString(), sha256(file));
            }
        }
        assertThat(found)
                .as("a migration was edited, which needs a new one instead; or a new one is not in " + LIST
                        + " yet (sha256sum in " + FILES + ")")
                .hasSize(Database.NEWEST)
                .isEqualTo(listed);
    }

    // Line ends are those of the text, whatever the checkout made of them.
    private static String sha256(Path file) throws IOException {
        String text = Files.readString(file).replace("\r\n", "\n");
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}

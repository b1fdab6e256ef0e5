package org.nestyear.app.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of messages lists every code of the program and no other. */
class MessagesPageTest {
    private static final Path REPOSITORY = Path.of("..");
    private static final Pattern CODE = Pattern.compile("NY-[A-Z]+(-[A-Z]+)*");

    @Test
    void everyCodeIsListedAndEveryListedCodeExists() throws IOException {
        Set<String> inProgram = new TreeSet<>();
        for (String module : List.of("core", "data", "records", "app")) {
            try (Stream<Path> files = Files.walk(REPOSITORY.resolve(module).resolve("src/main/java"))) {
                for (Path file :
                        (Iterable<Path>) files.filter(path -> path.toString().endsWith(".java"))::iterator) {
                    inProgram.addAll(codes(Files.readString(file)));
                }
            }
        }
        Set<String> onPage = codes(Files.readString(REPOSITORY.resolve("docs/messages.md")));

        assertThat(inProgram).hasSizeGreaterThan(40);
        assertThat(onPage).isEqualTo(inProgram);
    }

    private static Set<String> codes(String text) {
        Set<String> codes = new TreeSet<>();
        Matcher matcher = CODE.matcher(text);
        while (matcher.find()) {
            codes.add(matcher.group());
        }
        return codes;
    }
}

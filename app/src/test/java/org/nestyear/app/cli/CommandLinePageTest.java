package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every command on the page of the command line runs as it stands there. */
class CommandLinePageTest {
    private static final String START = "./nestyear ";
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @Test
    void everyCommandOnThePageAnswers(@TempDir Path folder) throws IOException {
        List<String> commands = new ArrayList<>(Files.readAllLines(Path.of("../docs/cli.md")).stream()
                .filter(line -> line.startsWith(START))
                .toList());
        assertThat(commands).hasSizeGreaterThan(10);

        for (String command : commands) {
            if (command.contains("apple-bloom.csv")) {
                // The keeper's own table, of which the page says that it is one's own.
                Files.writeString(
                        folder.resolve("my-season/apple-bloom.csv"), "date\n2012-04-18\n2013-04-30\n2014-05-04\n");
            }
            if (command.contains("incubator.csv")) {
                Files.writeString(
                        folder.resolve("my-season/incubator.csv"),
                        "time,temp_c\n2026-06-01 08:00,29.1\n2026-06-01 09:00,29.6\n2026-06-01 10:00,29.4\n");
            }
            if (command.contains("store.csv")) {
                Files.writeString(
                        folder.resolve("my-season/store.csv"),
                        "time,temp_c\n2025-12-01 08:00,3.1\n2025-12-01 20:00,2.9\n2025-12-02 20:00,3.4\n");
            }
            if (command.contains("counts.csv")) {
                Files.writeString(
                        folder.resolve("my-season/counts.csv"), "year,count\n2011,40\n2012,55\n2013,48\n2015,90\n");
            }
            if (command.contains("cocoons.csv")) {
                Files.writeString(folder.resolve("my-season/cocoons.csv"), "weight_mg\n62\n71\n118\n94\n130\n");
            }
            if (command.contains("sieves.csv")) {
                Files.writeString(folder.resolve("my-season/sieves.csv"), "sieve_mm,count\n0,60\n6.2,48\n");
            }
            if (command.contains("tally.csv")) {
                Files.writeString(
                        folder.resolve("my-season/tally.csv"),
                        "house,nest,year,cells,chalkbrood,wasps\npear,a1,2014,8,1,0\npear,a2,2014,6,0,0\nshed,b1,2014,7,0,1\n");
            }
            if (command.contains("years.csv")) {
                Files.writeString(
                        folder.resolve("my-season/years.csv"),
                        "year,females_out,daughters,joined\n2013,40,55,0\n2014,50,41,2\n2015,41,60,\n");
            }
            if (command.contains("visit.csv") && command.contains("import")) {
                Files.writeString(
                        folder.resolve("my-season/visit.csv"),
                        "site,on_date,species,more_plugged\nNumber Nine,2016-01-20,Osmia lignaria,3\n");
            }
            if (command.contains("house.png")) {
                Files.write(folder.resolve("my-season/house.png"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 1});
            }
            String[] words = words(command.substring(START.length()), folder);
            Run run = command.contains("--data") ? Run.later(words) : Run.of(words);

            assertThat(run.exit()).as(command + "\n" + run.err()).isZero();
            assertThat(run.out()).as(command).isNotBlank();
        }
    }

    private static String[] words(String command, Path folder) {
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(command);
        while (matcher.find()) {
            String word = matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
            words.add(word.replace("my-season", folder.resolve("my-season").toString()));
        }
        return words.toArray(String[]::new);
    }
}

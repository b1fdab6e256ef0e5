package org.nestyear.checks.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.nestyear.checks.Repository;

/** Rules about the source text itself, over every module. */
class SourceRulesTest {
    private static final int MOST_LINES = 400;
    private static final Pattern VAGUE_NAME = Pattern.compile(".*(Manager|Helper|Util|Utils|Impl)\\.java");
    // Written in two parts, so that this file does not find itself.
    private static final Pattern UNFINISHED = Pattern.compile("\\b(TO" + "DO|FIX" + "ME|XX" + "X)\\b|@Dis" + "abled");
    private static final Pattern TYPE = Pattern.compile("\\b(?:class|record|enum|interface)\\s+([A-Z]\\w*)");
    private static final Pattern QUOTED_NAME = Pattern.compile("`([A-Z][A-Za-z0-9]*[a-z][A-Za-z0-9]*)`");

    @Test
    void noMainFileIsLongerThanFourHundredLines() {
        List<String> tooLong = new ArrayList<>();
        for (Path file : mainFiles()) {
            long lines = Repository.text(file).lines().count();
            if (lines > MOST_LINES) {
                tooLong.add(file + ": " + lines + " lines");
            }
        }
        assertThat(tooLong).isEmpty();
    }

    @Test
    void everyMainPackageIsNullMarked() {
        Set<String> unmarked = new TreeSet<>();
        Set<Path> folders = new TreeSet<>();
        mainFiles().forEach(file -> folders.add(file.resolveSibling("package-info.java")));
        for (Path info : folders) {
            if (!Files.isRegularFile(info) || !Repository.text(info).contains("@NullMarked\npackage ")) {
                unmarked.add(info.toString());
            }
        }
        assertThat(folders).isNotEmpty();
        assertThat(unmarked).isEmpty();
    }

    @Test
    void nothingIsUnfinishedSwitchedOffOrVaguelyNamed() {
        List<String> faults = new ArrayList<>();
        List<Path> files = allFiles();
        for (Path file : files) {
            Matcher matcher = UNFINISHED.matcher(Repository.text(file));
            if (matcher.find()) {
                faults.add(file + " has " + matcher.group());
            }
            if (VAGUE_NAME.matcher(file.getFileName().toString()).matches()) {
                faults.add(file + " has a name that says nothing");
            }
        }
        assertThat(files).isNotEmpty();
        assertThat(faults).isEmpty();
    }

    /** Every type name in backticks in ARCHITECTURE.md must be a type of this repository. */
    @Test
    void architecturePageNamesTypesThatExist() {
        Path page = Repository.root().resolve("ARCHITECTURE.md");
        assumeTrue(Files.isRegularFile(page), "there is no ARCHITECTURE.md yet");
        Set<String> types = new TreeSet<>();
        for (Path file : allFiles()) {
            Matcher type = TYPE.matcher(Repository.text(file));
            while (type.find()) {
                types.add(type.group(1));
            }
        }
        Set<String> named = new TreeSet<>();
        Matcher name = QUOTED_NAME.matcher(Repository.text(page));
        while (name.find()) {
            named.add(name.group(1));
        }
        assertThat(named).as("names in ARCHITECTURE.md").isNotEmpty();
        assertThat(types).as("types of the repository").containsAll(named);
    }

    private static List<Path> mainFiles() {
        List<Path> files = new ArrayList<>();
        for (Path module : Repository.modulesWithMainCode()) {
            files.addAll(Repository.javaFiles(module.resolve("src/main/java")));
        }
        assertThat(files).as("main files").hasSizeGreaterThan(10);
        return files;
    }

    private static List<Path> allFiles() {
        List<Path> files = new ArrayList<>(mainFiles());
        List<Path> modules = new ArrayList<>(Repository.modulesWithMainCode());
        modules.add(Repository.root().resolve("checks"));
        for (Path module : modules) {
            Path tests = module.resolve("src/test/java");
            if (Files.isDirectory(tests)) {
                files.addAll(Repository.javaFiles(tests));
            }
        }
        return files;
    }
}

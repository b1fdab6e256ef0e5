package org.nestyear.checks.architecture;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.nestyear.checks.Repository;

/** The classes of every module that has been compiled, read from the build folders, so that no module need depend on this. */
final class CompiledCode {
    private static final JavaClasses CLASSES = read();

    private CompiledCode() {}

    /** All classes of the project but {@code package-info}. */
    static JavaClasses all() {
        return CLASSES;
    }

    /** Benchmarks sit in the packages they time and are no part of the program. */
    private static final String BENCHMARKS = "bench";

    /** Skips a test, visibly, where the module has not been compiled. */
    static void needModule(String module) {
        assumeTrue(
                Files.isDirectory(classesOf(module)),
                () -> "module " + module + " is not compiled; run the whole build");
    }

    private static Path classesOf(String module) {
        return Repository.root().resolve(module).resolve("target").resolve("classes");
    }

    private static JavaClasses read() {
        List<Path> folders = Repository.modulesWithMainCode().stream()
                .map(folder -> folder.getFileName().toString())
                .filter(module -> !module.equals(BENCHMARKS))
                .map(CompiledCode::classesOf)
                .filter(Files::isDirectory)
                .toList();
        return new ClassFileImporter()
                .importPaths(folders)
                .that(DescribedPredicate.describe("are classes of the project", CompiledCode::isOurs));
    }

    private static boolean isOurs(JavaClass type) {
        return type.getPackageName().startsWith("org.nestyear")
                && !type.getSimpleName().equals("package-info");
    }
}

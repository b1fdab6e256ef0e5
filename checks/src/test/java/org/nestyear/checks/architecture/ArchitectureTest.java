package org.nestyear.checks.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nestyear.checks.architecture.PackageTable.Row;

/** The arrows between packages. */
class ArchitectureTest {
    /** What core may use of the JDK: values, collections, dates. No files, network, clock, threads, reflection. */
    private static final Set<String> CORE_JDK = Set.of(
            "java.lang",
            "java.math",
            "java.util",
            "java.util.function",
            "java.util.regex",
            "java.util.stream",
            "java.time",
            "java.time.chrono",
            "java.time.format",
            "java.time.temporal",
            "java.time.zone");

    private static final Set<String> CORE_JDK_CLASSES =
            Set.of("java.io.Serializable", "java.lang.runtime.ObjectMethods");

    static List<Row> rows() {
        return PackageTable.ROWS;
    }

    @ParameterizedTest
    @MethodSource("rows")
    void packageKeepsToItsRow(Row row) {
        CompiledCode.needModule(row.module());
        classes().that(belongTo(row)).should(keepTo(row)).because(row.reason()).check(CompiledCode.all());
    }

    @Test
    void everyPackageHasARow() {
        Set<String> without = new TreeSet<>();
        for (JavaClass type : CompiledCode.all()) {
            if (PackageTable.rowOf(type.getPackageName()).isEmpty()) {
                without.add(type.getPackageName());
            }
        }
        assertThat(without)
                .as("packages without a row in PackageTable; add one with the reason for its arrows")
                .isEmpty();
    }

    @Test
    void tableNamesOnlyItsOwnRowsAndRunsOneWay() {
        Set<String> seen = new TreeSet<>();
        for (Row row : PackageTable.ROWS) {
            assertThat(row.reason()).as(row.name()).isNotBlank();
            // Every row uses only rows above it, so the table itself cannot hold a cycle.
            assertThat(row.uses()).as("arrows of " + row.name()).isSubsetOf(seen);
            assertThat(seen.add(row.name())).as(row.name() + " stands twice").isTrue();
        }
    }

    @Test
    void packagesAreFreeOfCycles() {
        for (String pattern : List.of("org.nestyear.(*)..", "org.nestyear.core.(*)..")) {
            slices().matching(pattern)
                    .should()
                    .beFreeOfCycles()
                    .because("a cycle makes two packages one that nobody can read apart")
                    .check(CompiledCode.all());
        }
    }

    private static DescribedPredicate<JavaClass> belongTo(Row row) {
        return DescribedPredicate.describe(
                "belong to " + row.name(),
                type -> PackageTable.rowOf(type.getPackageName())
                        .filter(row::equals)
                        .isPresent());
    }

    private static ArchCondition<JavaClass> keepTo(Row row) {
        return new ArchCondition<>("use only themselves, " + new TreeSet<>(row.uses()) + ", the JDK"
                + (row.wholeJdk() ? "" : "'s value types") + " and " + new TreeSet<>(row.jars())) {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
                    if (!allowed(row, dependency.getTargetClass().getBaseComponentType())) {
                        events.add(SimpleConditionEvent.violated(type, dependency.getDescription()));
                    }
                }
            }
        };
    }

    private static boolean allowed(Row row, JavaClass target) {
        String name = target.getPackageName();
        if (target.isPrimitive() || name.startsWith("org.jspecify")) {
            return true;
        }
        if (name.startsWith("org.nestyear")) {
            return PackageTable.rowOf(name)
                    .filter(other -> other.equals(row) || row.uses().contains(other.name()))
                    .isPresent();
        }
        if (name.startsWith("java.") || name.startsWith("javax.")) {
            return row.wholeJdk() || CORE_JDK.contains(name) || CORE_JDK_CLASSES.contains(target.getName());
        }
        return row.jars().stream().anyMatch(jar -> name.equals(jar) || name.startsWith(jar + "."));
    }
}

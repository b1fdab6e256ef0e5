package org.nestyear.checks.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What no class may call, and what the classes of core look like. */
class ForbiddenCallsTest {
    private static final String ALL = "org.nestyear..";
    private static final String CORE = "org.nestyear.core..";
    private static final String DATA = "org.nestyear.data..";
    private static final String RECORDS = "org.nestyear.records..";
    private static final String STATS = "org.nestyear.core.stats..";

    private static final Set<String> NOW = Set.of(
            "java.time.Instant",
            "java.time.LocalDate",
            "java.time.LocalDateTime",
            "java.time.LocalTime",
            "java.time.MonthDay",
            "java.time.OffsetDateTime",
            "java.time.Year",
            "java.time.YearMonth",
            "java.time.ZonedDateTime");

    @Test
    void coreTouchesNoFileNetworkDatabaseLogThreadOrReflection() {
        noClasses()
                .that()
                .resideInAPackage(CORE)
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "do input, output, logging, threads or reflection", ForbiddenCallsTest::isOutsideWorld))
                .because("the same core must run in a page, a command, a test and on a cluster with the same answer")
                .check(CompiledCode.all());
    }

    @Test
    void coreRunsNoStreamInParallel() {
        noClasses()
                .that()
                .resideInAPackage(CORE)
                .should()
                .callCodeUnitWhere(target(
                        "run a stream in parallel",
                        call -> call.getName().equals("parallelStream")
                                || call.getName().equals("parallel")))
                .because("sums in another order differ in the last digit")
                .check(CompiledCode.all());
    }

    @Test
    void coreAndDataReadNoClockZoneLocaleOrEnvironment() {
        noClasses()
                .that()
                .resideInAnyPackage(CORE, DATA)
                .should()
                .callCodeUnitWhere(target("read a hidden input", ForbiddenCallsTest::readsHiddenInput))
                .because("an answer must depend on nothing but its inputs, or it cannot be repeated")
                .check(CompiledCode.all());
    }

    @Test
    void nothingFormatsOrFoldsCaseWithoutALocale() {
        noClasses()
                .that()
                .resideInAPackage(ALL)
                .should()
                .callCodeUnitWhere(target("use the default locale", ForbiddenCallsTest::usesDefaultLocale))
                .because("numbers must not change their decimal sign, nor words their letters, with the machine")
                .check(CompiledCode.all());
    }

    @Test
    void coreDrawsRandomNumbersInStatsOnly() {
        noClasses()
                .that()
                .resideInAPackage(CORE)
                .and()
                .resideOutsideOfPackage(STATS)
                .should()
                .dependOnClassesThat(DescribedPredicate.describe("draw random numbers", ForbiddenCallsTest::isRandom))
                .because("one seeded source of randomness makes every run repeatable")
                .check(CompiledCode.all());
    }

    @Test
    void coreNeverDrawsWithoutASeed() {
        noClasses()
                .that()
                .resideInAPackage(CORE)
                .should()
                .callCodeUnitWhere(target("draw without a seed", ForbiddenCallsTest::drawsWithoutSeed))
                .because("a draw without a seed cannot be repeated")
                .check(CompiledCode.all());
    }

    @Test
    void coreIsMadeOfValuesAndFunctions() {
        classes()
                .that()
                .resideInAPackage(CORE)
                .should(beValuesOrFunctions())
                .because("what cannot change can be shared and tested without preparing it")
                .check(CompiledCode.all());
    }

    @Test
    void databaseIsReachedFromRecordsOnly() {
        noClasses()
                .that()
                .resideInAPackage(ALL)
                .and()
                .resideOutsideOfPackage(RECORDS)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "org.sqlite..", "org.postgresql..", "org.flywaydb..")
                .because("tables can only be changed safely while one package knows them")
                .check(CompiledCode.all());
    }

    @Test
    void standardOutputAndExitBelongToTheCommandLine() {
        noClasses()
                .that()
                .resideInAPackage(ALL)
                .and()
                .resideOutsideOfPackages("org.nestyear.app", "org.nestyear.app.cli..")
                .should(useStandardOutputOrExit())
                .because("answers go to standard output and messages to standard error, and one place decides")
                .check(CompiledCode.all());
    }

    private static boolean isOutsideWorld(JavaClass type) {
        String name = type.getName();
        if (name.equals("java.io.Serializable")) {
            return false;
        }
        return List.of(
                                "java.io.",
                                "java.nio.",
                                "java.net.",
                                "java.sql.",
                                "javax.sql.",
                                "java.util.logging.",
                                "java.lang.System$Logger",
                                "java.lang.reflect.",
                                "java.util.concurrent.")
                        .stream()
                        .anyMatch(name::startsWith)
                || Set.of("java.lang.Thread", "java.lang.ThreadLocal", "java.lang.Runtime", "java.lang.Process")
                        .contains(name);
    }

    private static boolean readsHiddenInput(CodeUnitCallTarget call) {
        String owner = call.getOwner().getName();
        String method = call.getName();
        return switch (owner) {
            case "java.lang.System" ->
                Set.of("currentTimeMillis", "nanoTime", "getProperty", "getenv", "getProperties", "lineSeparator")
                        .contains(method);
            case "java.time.Clock" -> method.startsWith("system") || method.startsWith("tick");
            case "java.time.ZoneId" -> method.equals("systemDefault");
            case "java.util.TimeZone", "java.util.Locale" -> method.equals("getDefault");
            case "java.util.Date", "java.util.GregorianCalendar" -> true;
            case "java.util.Calendar" -> method.equals("getInstance");
            case "java.nio.charset.Charset" -> method.equals("defaultCharset");
            default -> NOW.contains(owner) && method.equals("now");
        };
    }

    private static boolean usesDefaultLocale(CodeUnitCallTarget call) {
        String owner = call.getOwner().getName();
        String method = call.getName();
        boolean explicit = call.getRawParameterTypes().stream()
                .anyMatch(type -> type.getName().equals(Locale.class.getName()));
        if (explicit) {
            return false;
        }
        return switch (owner) {
            case "java.lang.String" ->
                Set.of("format", "formatted", "toLowerCase", "toUpperCase").contains(method);
            case "java.io.PrintStream", "java.io.PrintWriter" ->
                Set.of("printf", "format").contains(method);
            case "java.text.NumberFormat" -> method.startsWith("get") && method.endsWith("Instance");
            case "java.text.DecimalFormat", "java.text.SimpleDateFormat" -> method.equals("<init>");
            case "java.time.format.DateTimeFormatter" -> method.equals("ofPattern");
            case "java.util.Formatter" -> method.equals("<init>");
            default -> false;
        };
    }

    private static boolean isRandom(JavaClass type) {
        String name = type.getName();
        return name.startsWith("java.util.random.")
                || Set.of("java.util.Random", "java.util.SplittableRandom", "java.security.SecureRandom")
                        .contains(name)
                || name.startsWith("org.hipparchus.random.");
    }

    private static boolean drawsWithoutSeed(CodeUnitCallTarget call) {
        String owner = call.getOwner().getName();
        String method = call.getName();
        boolean bare = method.equals("<init>") && call.getRawParameterTypes().isEmpty();
        return switch (owner) {
            case "java.lang.Math", "java.lang.StrictMath" -> method.equals("random");
            case "java.util.Collections" ->
                method.equals("shuffle") && call.getRawParameterTypes().size() == 1;
            case "java.util.UUID" -> method.equals("randomUUID");
            case "java.util.Random", "java.util.SplittableRandom" -> bare;
            case "java.security.SecureRandom", "java.util.concurrent.ThreadLocalRandom" -> true;
            case "java.util.random.RandomGenerator" -> method.equals("getDefault") || method.equals("of");
            default -> owner.startsWith("org.hipparchus.random.") && bare;
        };
    }

    private static ArchCondition<JavaClass> beValuesOrFunctions() {
        return new ArchCondition<>("be records, enums, interfaces or final classes, with final fields only") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                boolean kind = type.isRecord()
                        || type.isEnum()
                        || type.isInterface()
                        || type.isAnonymousClass()
                        || type.getModifiers().contains(JavaModifier.FINAL)
                        // The body of an enum constant.
                        || type.getRawSuperclass().filter(JavaClass::isEnum).isPresent();
                if (!kind) {
                    events.add(SimpleConditionEvent.violated(type, type.getName() + " is an open class"));
                }
                for (JavaField field : type.getFields()) {
                    if (!field.getModifiers().contains(JavaModifier.FINAL)) {
                        events.add(SimpleConditionEvent.violated(field, field.getFullName() + " is not final"));
                    }
                }
            }
        };
    }

    private static ArchCondition<JavaClass> useStandardOutputOrExit() {
        return new ArchCondition<>("use standard output or end the program") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                type.getFieldAccessesFromSelf().stream()
                        .filter(access -> access.getTargetOwner().getName().equals("java.lang.System"))
                        .forEach(access -> events.add(SimpleConditionEvent.satisfied(type, access.getDescription())));
                type.getMethodCallsFromSelf().stream()
                        .filter(call -> call.getTargetOwner().getName().equals("java.lang.System")
                                && call.getName().equals("exit"))
                        .forEach(call -> events.add(SimpleConditionEvent.satisfied(type, call.getDescription())));
            }
        };
    }

    private static DescribedPredicate<JavaCall<?>> target(
            String description, java.util.function.Predicate<CodeUnitCallTarget> predicate) {
        return DescribedPredicate.describe(description, call -> predicate.test(call.getTarget()));
    }
}

package org.nestyear.checks.architecture;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Which package may use which: an allow-list, so that every new arrow is a decision. Names are without
 * {@code org.nestyear}. To add a package, add a row with its reason; there are no exemptions.
 */
final class PackageTable {
    private static final Set<String> GROUND = Set.of("core.source", "core.place", "core.stats");
    private static final Set<String> WORLD = with(GROUND, "core.weather", "core.sun", "core.species");
    private static final Set<String> SEASON = with(WORLD, "core.season");
    private static final Set<String> STAGES =
            with(SEASON, "core.winter", "core.bloom", "core.emergence", "core.flight", "core.brood");
    private static final Set<String> RELEASE = with(STAGES, "core.nesting", "core.release");
    private static final Set<String> PLAN = with(RELEASE, "core.advice", "core.forage", "core.plan");
    /** The small calculators. */
    private static final Set<String> SUMS = Set.of(
            "core.count",
            "core.hygiene",
            "core.guest",
            "core.leafcutter",
            "core.losses",
            "core.mud",
            "core.outlook",
            "core.reach",
            "core.sexing",
            "core.siting",
            "core.stocking");

    private static final Set<String> FACED = with(PLAN, SUMS.toArray(String[]::new));
    private static final Set<String> FILES = Set.of("data", "records");

    static final List<Row> ROWS = List.of(
            row("core.source", Set.of(), "where numbers come from must not depend on what they are used for"),
            row("core.place", Set.of(), "a place is a value type that everything else may hold"),
            row(
                            "core.stats",
                            Set.of("core.source"),
                            "statistics know numbers and their ranges, nothing of bees, so they can be checked against tables")
                    .jars("org.hipparchus"),
            row("core.sun", Set.of("core.place"), "where the sun stands depends on the place and nothing else")
                    .jars("net.e175.klaus.solarpositioning"),
            row("core.weather", with(GROUND, "core.sun"), "hours and light from days need day length, never a species"),
            row("core.species", Set.of("core.source"), "a species is a set of sourced numbers, not a behaviour"),
            row("core.season", WORLD, "what a keeper tells us is said in terms of places, weather and species"),
            row("core.winter", SEASON, "one stage of the year: reads the season, not the other stages"),
            row("core.bloom", SEASON, "one stage of the year: reads the season, not the other stages")
                    .jars("org.hipparchus"),
            row("core.emergence", SEASON, "one stage of the year: reads the season, not the other stages"),
            row("core.brood", SEASON, "one stage of the year: reads the season, not the other stages"),
            row("core.flight", SEASON, "one stage of the year: reads the season, not the other stages"),
            row(
                    "core.leafcutter",
                    WORLD,
                    "leafcutter bees share weather and sources with mason bees, none of their stages"),
            row("core.nesting", STAGES, "nesting joins the stages and must not know how its result is used"),
            row(
                    "core.forage",
                    SEASON,
                    "flowers and cells are held against each other whatever the cells were reckoned from"),
            row(
                    "core.release",
                    with(STAGES, "core.nesting", "core.forage"),
                    "the search over dates runs the stages, it gives no advice"),
            row(
                            "core.count",
                            Set.of("core.source"),
                            "what a sample tells is arithmetic on counts, whatever was counted")
                    .jars("org.hipparchus"),
            row(
                    "core.losses",
                    Set.of("core.count"),
                    "a loss table is arithmetic on what was opened; what it means is advice"),
            row(
                    "core.advice",
                    with(RELEASE, "core.forage", "core.leafcutter", "core.losses", "core.count"),
                    "findings and jobs are read off results; results must not depend on them"),
            row(
                    "core.plan",
                    with(RELEASE, "core.advice", "core.forage"),
                    "the plan is the top of the core and nothing in core sees it"),
            row(
                    "core.hygiene",
                    Set.of("core.source"),
                    "how strong a rinse is depends on a bottle and a bucket, not on a season"),
            row("core.guest", Set.of("core.source"), "who lives in a tunnel is told by signs, not by a season"),
            row("core.mud", Set.of(), "soil and water follow physics and a definition, whoever digs them"),
            row("core.reach", Set.of("core.source"), "how far a bee flies depends on its size alone"),
            row("core.outlook", Set.of("core.source", "core.stats"), "years of counts have no weather in them")
                    .jars("org.hipparchus"),
            row("core.sexing", Set.of("core.stats"), "groups of sizes are statistics, whatever was weighed")
                    .jars("org.hipparchus"),
            row("core.siting", WORLD, "how a house stands is sun, air and sources, whatever is planned for it"),
            row(
                    "core.stocking",
                    with(STAGES, "core.nesting"),
                    "how many bees and tunnels is read off the numbers of nesting, not off a plan"),
            row(
                            "data",
                            with(SEASON, "core.forage", "core.losses", "core.guest"),
                            "files hold what goes in; reading them must not need the model's answers")
                    .jars("de.siegmar.fastcsv", "org.tomlj", "tools.jackson", "com.fasterxml.jackson.annotation")
                    .withWholeJdk(),
            row(
                            "data.exchange",
                            Set.of("core.losses"),
                            "files for other programs are written from small records; they know neither tables nor plans")
                    .jars("de.siegmar.fastcsv", "tools.jackson")
                    .withWholeJdk(),
            row(
                            "records",
                            with(PLAN, "core.losses"),
                            "the only place that knows the database; it stores values, it does not compute")
                    .jars("org.springframework.jdbc", "org.springframework.dao", "org.springframework.transaction")
                    .jars("org.flywaydb", "org.sqlite", "org.postgresql", "com.zaxxer.hikari", "tools.jackson")
                    .withWholeJdk(),
            row(
                            "app.service",
                            with(FACED, "data", "data.exchange", "records"),
                            "the one use-case layer: every face asks here")
                    .jars("org.springframework.transaction", "org.springframework.dao", "org.slf4j")
                    .withWholeJdk(),
            row(
                            "app.book",
                            with(FACED, "data", "data.exchange", "records", "app.service"),
                            "use cases of the records; plans do not know where their season was written down")
                    .jars("org.springframework.transaction", "org.springframework.dao", "tools.jackson", "org.slf4j")
                    .withWholeJdk(),
            row("app.cli", with(FACED, "app.service", "app.book"), "a face: asks the service, never files or tables")
                    .jars("picocli", "tools.jackson")
                    .withWholeJdk(),
            row("app.picture", PLAN, "draws values as text; the same drawing serves page and paper"),
            row(
                            "app.web",
                            with(PLAN, "app.service", "app.book", "app.picture"),
                            "a face: asks the service, never files or tables")
                    .jars("org.springframework", "jakarta.servlet", "gg.jte", "tools.jackson", "org.slf4j")
                    .withWholeJdk(),
            row(
                            "app",
                            with(FILES, "app.service", "app.book", "app.cli", "app.web"),
                            "starts the program and wires the faces")
                    .jars("picocli", "org.springframework")
                    .withWholeJdk());

    private PackageTable() {}

    /** The row a class of this package belongs to: the longest name that fits. */
    static Optional<Row> rowOf(String packageName) {
        return ROWS.stream()
                .filter(row -> packageName.equals(row.fullName()) || packageName.startsWith(row.fullName() + "."))
                // "app" itself covers no sub-package: a new face needs a row of its own.
                .filter(row -> !row.name().equals("app") || packageName.equals(row.fullName()))
                .max(Comparator.comparingInt(row -> row.name().length()));
    }

    private static Row row(String name, Set<String> uses, String reason) {
        return new Row(name, uses, Set.of(), false, reason);
    }

    private static Set<String> with(Set<String> names, String... more) {
        Set<String> all = new HashSet<>(names);
        all.addAll(List.of(more));
        return Set.copyOf(all);
    }

    /**
     * One package and what it may use besides itself.
     *
     * @param name package without {@code org.nestyear}
     * @param uses names of other rows
     * @param jars package prefixes of libraries
     * @param wholeJdk false for core, which has the small list of {@link ArchitectureTest}
     * @param reason why, for whoever breaks the rule
     */
    record Row(String name, Set<String> uses, Set<String> jars, boolean wholeJdk, String reason) {
        String fullName() {
            return "org.nestyear." + name;
        }

        String module() {
            int dot = name.indexOf('.');
            return dot < 0 ? name : name.substring(0, dot);
        }

        Row jars(String... prefixes) {
            return new Row(name, uses, with(jars, prefixes), wholeJdk, reason);
        }

        Row withWholeJdk() {
            return new Row(name, uses, jars, true, reason);
        }

        @Override
        public String toString() {
            return name;
        }
    }
}

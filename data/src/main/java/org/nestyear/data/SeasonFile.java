package org.nestyear.data;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.place.Site;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.CommunityBloom;
import org.nestyear.core.season.Goal;
import org.nestyear.core.season.Nests;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonInputs;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * Reads a season file: TOML, {@code format = 1}, the input of a plan and nothing more. Weather files are looked for
 * beside it. Every fault names its line and column; an unknown key names the nearest known one.
 */
public final class SeasonFile {
    private static final int FORMAT = 1;

    private final TextSource file;
    private final SourceText source;
    private final DayOfPlan dayOfPlan;
    private final List<DataFault> faults = new ArrayList<>();

    private SeasonFile(TextSource file, DayOfPlan dayOfPlan) {
        this.file = file;
        this.source = SourceText.read(file);
        this.dayOfPlan = dayOfPlan;
    }

    /**
     * Reads a season without a fault.
     *
     * @throws DataFault the first thing that is wrong with it
     */
    public static Season read(TextSource file, DayOfPlan dayOfPlan) {
        SeasonCheck check = check(file, dayOfPlan);
        if (!check.faults().isEmpty()) {
            throw check.faults().get(0);
        }
        Season season = check.season();
        if (season == null) {
            throw new IllegalStateException("a season file without a fault must hold a season");
        }
        return season;
    }

    /** Reads a season to its end and lists what is wrong with it: one fault a table, and every unknown key. */
    public static SeasonCheck check(TextSource file, DayOfPlan dayOfPlan) {
        SeasonFile season;
        try {
            season = new SeasonFile(file, dayOfPlan);
        } catch (DataFault fault) {
            return new SeasonCheck(null, List.of(fault));
        }
        Season read = season.read();
        season.faults.sort(Comparator.comparing((DataFault f) -> !f.at().file().equals(file.name()))
                .thenComparing(f -> rank(f.code()))
                .thenComparing(f -> f.at().file())
                .thenComparing(f -> f.at().line()));
        return new SeasonCheck(season.faults.isEmpty() ? read : null, season.faults);
    }

    /** A misspelt table or key also leaves one missing: the misspelling is the thing to be told first. */
    private static int rank(FaultCode code) {
        return switch (code) {
            case SEASON_TABLE -> 0;
            case SEASON_MISSING -> 2;
            default -> 1;
        };
    }

    private @Nullable Season read() {
        TomlParseResult toml = TomlText.parse(source.text());
        if (toml.hasErrors()) {
            toml.errors().forEach(error -> faults.add(SeasonSyntax.fault(error, source)));
            return null;
        }
        SeasonTable top = new SeasonTable(source, toml, "", new Position(source.name(), 1, 1));
        faults.addAll(top.unknownKeys());
        if (attempt(() -> format(top)) == null) {
            return null;
        }
        SeasonTable aimTable = table(top, toml, "aim", false);
        Aim aim = aimTable == null ? new Aim(Goal.BOTH, null) : attempt(() -> aim(aimTable));
        return aim == null ? null : season(top, toml, aim);
    }

    private @Nullable Season season(SeasonTable top, TomlTable toml, Aim aim) {
        LocalDate given = aim.today();
        LocalDate today = dayOfPlan.choose(given);
        SeasonTable siteTable = table(top, toml, "site", true);
        Site site = siteTable == null ? null : attempt(() -> SeasonParts.site(siteTable));
        SeasonTable weatherTable = table(top, toml, "weather", true);
        JoinedWeather weather =
                weatherTable == null ? null : attempt(() -> JoinedWeather.read(weatherTable, file, today));
        List<SeasonTable> batchTables = tables(top, toml, "batch", true);
        List<Batch> batches = attemptAll(batchTables, SeasonParts::batch);
        List<Nests> nests = attemptAll(tables(top, toml, "nests", true), SeasonParts::nests);
        List<Plant> plants = plants(tables(top, toml, "plant", true), today, site);
        CommunityBloom community = community(tables(top, toml, "community", false), today);
        if (!faults.isEmpty() || site == null || weather == null) {
            return null;
        }
        SeasonInputs inputs = new SeasonInputs(
                site, weather.record(), weather.forecast(), batches, nests, plants, community, aim.goal(), today);
        List<Position> speciesAt = batchTables.stream()
                .map(batch -> batch.valuePosition("species"))
                .toList();
        return new Season(file.name(), inputs, given != null, speciesAt, weather.files(), weather.forecastFile());
    }

    private List<Plant> plants(List<SeasonTable> tables, LocalDate today, @Nullable Site site) {
        List<Plant> plants = attemptAll(tables, table -> PlantPart.of(table, today, site));
        if (!plants.isEmpty()
                && plants.size() == tables.size()
                && plants.stream().noneMatch(Plant::target)) {
            faults.add(new DataFault(
                    FaultCode.SEASON_NO_TARGET,
                    tables.get(0).start(),
                    "no [[plant]] is the target",
                    "target = true in at least one",
                    ""));
        }
        return plants;
    }

    private static int format(SeasonTable top) {
        if (!top.has("format")) {
            throw top.missing("format", "format = 1 in the first line");
        }
        int format = top.whole("format", 1, Integer.MAX_VALUE);
        if (format != FORMAT) {
            throw new DataFault(
                    FaultCode.SEASON_FORMAT,
                    top.valuePosition("format"),
                    "the file is written in format " + format,
                    "format 1",
                    "it was made by a newer version of this program");
        }
        return format;
    }

    private static Aim aim(SeasonTable aim) {
        Goal goal = aim.has("goal") ? aim.word("goal", Goal.values(), Goal::word) : Goal.BOTH;
        return new Aim(goal, aim.has("today") ? aim.date("today") : null);
    }

    private @Nullable CommunityBloom community(List<SeasonTable> tables, LocalDate today) {
        if (tables.size() > 1) {
            faults.add(new DataFault(
                    FaultCode.SEASON_NOT_YET,
                    tables.get(1).start(),
                    "there are " + tables.size() + " tables [[community]]",
                    "one, for all other bloom together",
                    ""));
            return null;
        }
        List<CommunityBloom> blooms = attemptAll(tables, table -> SeasonParts.community(table, today));
        return blooms.isEmpty() ? null : blooms.get(0);
    }

    private @Nullable SeasonTable table(SeasonTable top, TomlTable toml, String name, boolean needed) {
        Object value = toml.get(List.of(name));
        if (value == null) {
            if (needed) {
                faults.add(top.missing(name, "a table [" + name + "]"));
            }
            return null;
        }
        if (!(value instanceof TomlTable table)) {
            faults.add(wronglyWritten(top, name));
            return null;
        }
        SeasonTable read = new SeasonTable(source, table, name, top.keyPosition(name));
        faults.addAll(read.unknownKeys());
        return read;
    }

    private List<SeasonTable> tables(SeasonTable top, TomlTable toml, String name, boolean needed) {
        Object value = toml.get(List.of(name));
        List<SeasonTable> read = new ArrayList<>();
        if (value == null) {
            if (needed) {
                faults.add(top.missing(name, "at least one table [[" + name + "]]"));
            }
            return read;
        }
        if (!(value instanceof TomlArray array) || array.isEmpty() || !onlyTables(array)) {
            faults.add(wronglyWritten(top, name));
            return read;
        }
        for (int i = 0; i < array.size(); i++) {
            TomlPosition at = array.inputPositionOf(i);
            SeasonTable table = new SeasonTable(
                    source, array.getTable(i), name, new Position(source.name(), at.line(), at.column()));
            faults.addAll(table.unknownKeys());
            read.add(table);
        }
        return read;
    }

    private static boolean onlyTables(TomlArray array) {
        for (int i = 0; i < array.size(); i++) {
            if (!(array.get(i) instanceof TomlTable)) {
                return false;
            }
        }
        return true;
    }

    private static DataFault wronglyWritten(SeasonTable top, String name) {
        return new DataFault(
                FaultCode.SEASON_TYPE,
                top.keyPosition(name),
                "\"" + name + "\" is not written as " + SeasonKeys.written(name),
                "a line " + SeasonKeys.written(name) + " and its keys below it",
                "");
    }

    private <T extends @Nullable Object> @Nullable T attempt(Supplier<T> part) {
        try {
            return part.get();
        } catch (DataFault fault) {
            faults.add(fault);
            return null;
        }
    }

    private <T> List<T> attemptAll(List<SeasonTable> tables, Function<SeasonTable, T> part) {
        List<T> parts = new ArrayList<>();
        for (SeasonTable table : tables) {
            T read = attempt(() -> part.apply(table));
            if (read != null) {
                parts.add(read);
            }
        }
        return parts;
    }

    private record Aim(Goal goal, @Nullable LocalDate today) {}
}

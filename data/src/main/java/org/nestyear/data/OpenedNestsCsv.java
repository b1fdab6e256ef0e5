package org.nestyear.data;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.losses.OpenedNest;

/**
 * Reads a tally of opened nests: a line a nest with {@code house}, {@code nest}, {@code nest_kind} and {@code year} where
 * told, {@code cells} or {@code alive} or both, and a column for each cause that was looked for. Every column counts, so a
 * heading that is not known is refused; {@code note} is passed over.
 */
public final class OpenedNestsCsv {
    private static final String HOUSE = "house";
    private static final String NEST = "nest";
    private static final String KIND = "nest_kind";
    private static final String YEAR = "year";
    private static final String CELLS = "cells";
    private static final String ALIVE = "alive";
    private static final String NOTE = "note";
    private static final double MOST = 1e6;
    /** Other headings, each with the one it stands for. */
    private static final Map<String, String> SYNONYMS = synonyms();

    private final KeptTable table;
    private final Map<String, String> headings = new LinkedHashMap<>();

    private OpenedNestsCsv(KeptTable table) {
        this.table = table;
    }

    /**
     * The tally, one nest at least.
     *
     * @throws DataFault the first thing that is wrong with the table
     */
    public static OpenedNests read(TextSource file) {
        OpenedNestsCsv reading = new OpenedNestsCsv(KeptTable.read(file, FaultCode.TALLY_SYNTAX));
        reading.takeHeader();
        List<OpenedNest> nests = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (KeptTable.Row row : reading.table.rows()) {
            OpenedNest nest = reading.nest(row);
            String name = nest.year() + "\n" + nest.house() + "\n" + nest.nest();
            if (!nest.nest().isEmpty() && !seen.add(name)) {
                throw row.fault(
                        FaultCode.TALLY_TWICE,
                        reading.heading(NEST),
                        "the nest \"" + nest.nest() + "\" stands there twice",
                        "a line a nest, its name once in a house and year",
                        "add the two lines up, or give the second nest a name of its own");
            }
            nests.add(nest);
        }
        if (nests.isEmpty()) {
            throw reading.table.emptyFault(
                    "the table holds no nest", "a heading such as house,nest,cells,chalkbrood and then a line a nest");
        }
        return new OpenedNests(nests, reading.looked());
    }

    private void takeHeader() {
        List<String> known = knownNames();
        for (String name : table.names()) {
            String plain = name.replace(' ', '_').replace('-', '_');
            String meant = SYNONYMS.getOrDefault(plain, plain);
            if (meant.equals(NOTE)) {
                continue;
            }
            if (!known.contains(meant)) {
                String nearest = NearestWord.find(plain, known);
                throw table.columnFault(
                        FaultCode.TALLY_COLUMN,
                        name,
                        "the column \"" + name + "\" is not one of a tally",
                        "one of " + String.join(", ", known) + ", note",
                        nearest == null
                                ? "name it note if it is not to be counted, or other for another cause"
                                : "\"" + nearest + "\" was meant");
            }
            String earlier = headings.putIfAbsent(meant, name);
            if (earlier != null) {
                throw table.columnFault(
                        FaultCode.TALLY_COLUMN,
                        name,
                        "the columns \"" + earlier + "\" and \"" + name + "\" tell the same",
                        "one column for " + meant,
                        "");
            }
        }
        if (!table.names().isEmpty() && !headings.containsKey(CELLS) && !headings.containsKey(ALIVE)) {
            throw table.headerFault(
                    FaultCode.TALLY_COLUMN, "a column cells (all cells of the nest) or alive, or both", "");
        }
        if (!table.names().isEmpty()
                && looked().isEmpty()
                && !(headings.containsKey(CELLS) && headings.containsKey(ALIVE))) {
            throw table.headerFault(
                    FaultCode.TALLY_COLUMN, "a column for a cause, such as chalkbrood, or both cells and alive", "");
        }
    }

    private static List<String> knownNames() {
        List<String> known = new ArrayList<>(List.of(HOUSE, NEST, KIND, YEAR, CELLS, ALIVE));
        for (Cause cause : Cause.values()) {
            known.add(cause.word());
        }
        return known;
    }

    private List<Cause> looked() {
        List<Cause> looked = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            if (headings.containsKey(cause.word())) {
                looked.add(cause);
            }
        }
        // Cells and living bees alone leave losses without a cause.
        return looked.isEmpty() && headings.containsKey(CELLS) && headings.containsKey(ALIVE)
                ? List.of(Cause.UNKNOWN)
                : looked;
    }

    private String heading(String name) {
        return headings.getOrDefault(name, name);
    }

    private OpenedNest nest(KeptTable.Row row) {
        Map<Cause, Integer> lost = new EnumMap<>(Cause.class);
        int sum = 0;
        for (Cause cause : Cause.values()) {
            Integer number = count(row, cause.word());
            if (number != null) {
                lost.put(cause, number);
                sum += number;
            }
        }
        Integer alive = count(row, ALIVE);
        Integer cells = count(row, CELLS);
        if (cells == null && alive == null) {
            String column = headings.containsKey(CELLS) ? CELLS : ALIVE;
            throw row.fault(
                    FaultCode.TALLY_NUMBER,
                    heading(column),
                    "neither the cells nor the living ones of this nest are told",
                    "a whole number",
                    "");
        }
        int all = cells == null ? sum + (alive == null ? 0 : alive) : cells;
        check(row, all, alive, sum, lost);
        return new OpenedNest(
                row.text(heading(HOUSE)), row.text(heading(NEST)), row.text(heading(KIND)), year(row), all, lost);
    }

    /** Cells, living ones and causes must agree; without any cause told, what is not alive is lost to an unknown one. */
    private void check(KeptTable.Row row, int cells, @Nullable Integer alive, int sum, Map<Cause, Integer> lost) {
        String column = headings.containsKey(CELLS) ? CELLS : ALIVE;
        if (cells == 0) {
            throw row.fault(
                    FaultCode.TALLY_SUM,
                    heading(column),
                    "this nest has no cell",
                    "one cell or more a line",
                    "leave empty tunnels out");
        }
        int told = sum + (alive == null ? 0 : alive);
        if (alive != null && lost.isEmpty() && alive <= cells) {
            lost.put(Cause.UNKNOWN, cells - alive);
            return;
        }
        if (told > cells || (alive != null && told < cells)) {
            throw row.fault(
                    FaultCode.TALLY_SUM,
                    heading(column),
                    (alive == null ? "the causes" : "the living ones and the causes") + " come to " + told + " of "
                            + cells + " cells",
                    alive == null ? "no more than the cells" : "that they come to the cells",
                    told > cells
                            ? "a cell was counted under two causes: keep the first that explains it"
                            : "the rest belongs in a column unknown");
        }
    }

    private @Nullable Integer year(KeptTable.Row row) {
        String text = row.text(heading(YEAR));
        if (Cells.isMissing(text)) {
            return null;
        }
        if (!text.matches("\\d{4}")) {
            throw row.fault(FaultCode.TALLY_NUMBER, heading(YEAR), quoted(text), "a year such as 2015", "");
        }
        return Integer.valueOf(text);
    }

    private @Nullable Integer count(KeptTable.Row row, String column) {
        String text = row.text(heading(column));
        if (!headings.containsKey(column) || Cells.isMissing(text)) {
            return null;
        }
        double number = row.number(heading(column));
        if (!(number >= 0 && number <= MOST) || number != Math.rint(number)) {
            throw row.fault(
                    FaultCode.TALLY_NUMBER, heading(column), quoted(text), "a whole number from 0 to 1,000,000", "");
        }
        return (int) number;
    }

    private static String quoted(String text) {
        return "\"" + text + "\" stands in the tally";
    }

    private static Map<String, String> synonyms() {
        Map<String, String> all = new LinkedHashMap<>();
        put(all, HOUSE, "site", "box", "shelter", "place");
        put(all, NEST, "tube", "reed", "tunnel", "straw", "nest_id", "nest_name");
        put(all, KIND, "kind", "material", "nest_type", "type");
        put(all, YEAR, "season");
        put(all, CELLS, "cell", "all", "total");
        put(all, ALIVE, "live", "living", "healthy", "cocoons", "good");
        put(all, NOTE, "notes", "remark", "remarks", "date", "species");
        put(all, Cause.CHALKBROOD.word(), "chalk_brood", "chalk", "ascosphaera");
        put(all, Cause.MITES.word(), "mite", "pollen_mites", "chaetodactylus");
        put(all, Cause.FLIES.word(), "fly", "houdini_fly", "cacoxenus", "maggots");
        put(all, Cause.WASPS.word(), "wasp", "parasitoids", "parasitoid", "monodontomerus", "pteromalus", "chalcids");
        put(all, Cause.CUCKOOS.word(), "cuckoo", "sapyga", "stelis", "coelioxys", "chrysis");
        put(all, Cause.BEETLES.word(), "beetle", "dermestids", "trogoderma");
        put(all, Cause.ROBBED.word(), "birds", "bird", "mice", "ants", "predators");
        put(all, Cause.POLLEN_BALLS.word(), "pollen_ball", "pollen", "uneaten");
        put(all, Cause.MOULD.word(), "mold", "mouldy", "moldy");
        put(all, Cause.DEAD_YOUNG.word(), "dead_larvae", "dead_grubs", "dead_pupae", "dead_brood");
        put(all, Cause.DEAD_ADULTS.word(), "dead_adult", "dead_bees", "dead_cocoons");
        put(all, Cause.OTHER.word(), "others");
        put(all, Cause.UNKNOWN.word(), "dead", "lost", "unexplained");
        return Map.copyOf(all);
    }

    private static void put(Map<String, String> all, String meant, String... others) {
        for (String other : others) {
            all.put(other, meant);
        }
    }
}

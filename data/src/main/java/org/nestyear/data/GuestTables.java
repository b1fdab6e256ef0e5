package org.nestyear.data;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.nestyear.core.guest.CardQuestion;
import org.nestyear.core.guest.Enemy;
import org.nestyear.core.guest.Lodger;
import org.nestyear.core.guest.Sign;
import org.nestyear.core.source.Basis;
import org.nestyear.core.source.Source;

/** Reads the tables of words that ship with the program: the plug card and the enemies of brood. */
public final class GuestTables {
    private GuestTables() {}

    /**
     * Answers that can be given to the questions of the plug card.
     *
     * @throws IllegalStateException if the table is broken, which is a defect of the program
     */
    public static List<Sign> signs() {
        List<Sign> signs = new ArrayList<>();
        for (NamedCsvRecord row : CatalogueFiles.rows("signs.csv", new StringBuilder())) {
            CardQuestion question = word("signs", row, "question", CardQuestion.values(), CardQuestion::word);
            signs.add(new Sign(question, row.getField("word"), row.getField("meaning")));
        }
        return List.copyOf(signs);
    }

    /**
     * Whoever may be in a tunnel.
     *
     * @throws IllegalStateException if the table is broken, which is a defect of the program
     */
    public static List<Lodger> lodgers() {
        Map<String, Source> sources = CatalogueFiles.sources(new StringBuilder());
        List<Lodger> lodgers = new ArrayList<>();
        for (NamedCsvRecord row : CatalogueFiles.rows("lodgers.csv", new StringBuilder())) {
            lodgers.add(new Lodger(
                    row.getField("id"),
                    row.getField("name"),
                    row.getField("latin"),
                    word("lodgers", row, "kind", Lodger.Kind.values(), Lodger.Kind::word),
                    word("lodgers", row, "common", Lodger.Often.values(), Lodger.Often::word),
                    signs(row, ""),
                    signs(row, "_sometimes"),
                    word("lodgers", row, "verdict", Lodger.Verdict.values(), Lodger.Verdict::word),
                    row.getField("in_flight"),
                    row.getField("at_rest"),
                    row.getField("never"),
                    row.getField("caution"),
                    Basis.ofWord(row.getField("basis")),
                    source("lodgers", row, sources),
                    row.getField("locator")));
        }
        return List.copyOf(lodgers);
    }

    /**
     * The enemies of brood.
     *
     * @throws IllegalStateException if the table is broken, which is a defect of the program
     */
    public static List<Enemy> enemies() {
        Map<String, Source> sources = CatalogueFiles.sources(new StringBuilder());
        List<Enemy> enemies = new ArrayList<>();
        for (NamedCsvRecord row : CatalogueFiles.rows("enemies.csv", new StringBuilder())) {
            enemies.add(new Enemy(
                    row.getField("id"),
                    row.getField("name"),
                    List.copyOf(words(row, "also")),
                    row.getField("latin"),
                    row.getField("kind"),
                    words(row, "bees"),
                    words(row, "seasons"),
                    row.getField("looks"),
                    row.getField("when"),
                    row.getField("rate"),
                    row.getField("do"),
                    row.getField("never"),
                    row.getField("caution"),
                    Basis.ofWord(row.getField("basis")),
                    source("enemies", row, sources),
                    row.getField("locator")));
        }
        return List.copyOf(enemies);
    }

    private static Map<CardQuestion, Set<String>> signs(NamedCsvRecord row, String suffix) {
        Map<CardQuestion, Set<String>> signs = new EnumMap<>(CardQuestion.class);
        for (CardQuestion question : CardQuestion.values()) {
            signs.put(question, words(row, question.word() + suffix));
        }
        return signs;
    }

    private static Set<String> words(NamedCsvRecord row, String column) {
        String text = row.getField(column).strip();
        return text.isEmpty() ? Set.of() : new LinkedHashSet<>(List.of(text.split(" +", -1)));
    }

    private static <E extends Enum<E>> E word(
            String table, NamedCsvRecord row, String column, E[] values, Function<E, String> word) {
        for (E value : values) {
            if (word.apply(value).equals(row.getField(column))) {
                return value;
            }
        }
        throw broken(table, row, "\"" + row.getField(column) + "\" is no " + column);
    }

    private static Source source(String table, NamedCsvRecord row, Map<String, Source> sources) {
        Source source = sources.get(row.getField("source"));
        if (source == null) {
            throw broken(table, row, "no source has the key \"" + row.getField("source") + "\"");
        }
        return source;
    }

    private static IllegalStateException broken(String table, NamedCsvRecord row, String what) {
        return new IllegalStateException(
                "catalogue table " + table + ", line " + row.getStartingLineNumber() + ": " + what);
    }
}

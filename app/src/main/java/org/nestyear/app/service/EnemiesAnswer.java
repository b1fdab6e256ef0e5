package org.nestyear.app.service;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.guest.Enemy;
import org.nestyear.data.GuestTables;

/**
 * Enemies of brood.
 *
 * @param enemies those asked for, in the order of the catalogue
 * @param named true when they were asked for by name
 * @param fingerprint sixteen characters that change with the question, the catalogue or the version
 */
public record EnemiesAnswer(List<Enemy> enemies, boolean named, String fingerprint) {
    public EnemiesAnswer {
        enemies = List.copyOf(enemies);
    }

    /** All of them: the name in plain words by the word of the command. */
    public static Map<String, String> names() {
        Map<String, String> names = new LinkedHashMap<>();
        GuestTables.enemies().forEach(enemy -> names.put(enemy.id(), enemy.name()));
        return names;
    }

    /**
     * The enemies asked for.
     *
     * @param name a name, a Latin name or another word for it; null for all
     * @param bees only those of these bees, mason or leafcutter; null for both
     * @param when only those of this part of the year; null for all
     * @throws Refusal if no enemy has this name
     */
    public static EnemiesAnswer of(@Nullable String name, @Nullable String bees, @Nullable PartOfYear when) {
        List<Enemy> found = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (Enemy enemy : GuestTables.enemies()) {
            List<String> own = words(enemy);
            words.addAll(own);
            boolean meant = name == null || own.contains(plain(name));
            if (meant
                    && (bees == null || enemy.bees().contains(bees))
                    && (when == null || enemy.seasons().contains(when.word()))) {
                found.add(enemy);
            }
        }
        if (found.isEmpty()) {
            boolean known = name != null && words.contains(plain(name));
            throw Refusal.usage(
                    known
                            ? "\"" + name + "\" is not an enemy of those bees at that time; expected fewer limits."
                            : "\"" + name + "\" is not an enemy on the list; expected one of "
                                    + String.join(
                                            ", ",
                                            GuestTables.enemies().stream()
                                                    .map(Enemy::id)
                                                    .toList())
                                    + ".",
                    known ? "Maybe leave --bees and --when out." : Spelling.advice(String.valueOf(name), words));
        }
        Fingerprint print = new Fingerprint("");
        print.add(String.valueOf(name) + " " + bees + " " + when);
        print.add(found);
        return new EnemiesAnswer(found, name != null, print.digits());
    }

    private static List<String> words(Enemy enemy) {
        List<String> words = new ArrayList<>(enemy.also());
        words.add(enemy.id());
        words.add(plain(enemy.name()));
        for (String part : enemy.latin().split("[ ,]+", -1)) {
            if (!part.isEmpty()) {
                words.add(plain(part));
            }
        }
        return words;
    }

    private static String plain(String word) {
        return word.strip().toLowerCase(Locale.ROOT);
    }
}

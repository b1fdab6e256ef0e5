package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.EnemiesAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.core.guest.Enemy;

/** Enemies in words and as JSON; the schema is {@code schema/enemies.schema.json}. */
final class EnemiesPrint {
    private static final List<String> SEASONS = List.of("spring", "summer", "autumn", "winter");

    private EnemiesPrint() {}

    /** The page. */
    static Page text(EnemiesAnswer answer) {
        Page page = new Page();
        if (answer.named()) {
            answer.enemies().forEach(enemy -> one(page, enemy));
            return page;
        }
        page.paragraph(
                0,
                "Enemies of brood. For one of them: enemies NAME. What only lives there beside your bees is on the"
                        + " plug card (plug).");
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("name", "of", "in"));
        for (Enemy enemy : answer.enemies()) {
            rows.add(List.of(enemy.id(), bees(enemy), String.join(", ", seasons(enemy))));
        }
        page.blank();
        page.table(0, rows);
        page.blank();
        for (Enemy enemy : answer.enemies()) {
            page.hanging(0, 4, enemy.id() + ": " + enemy.looks());
        }
        return page;
    }

    private static void one(Page page, Enemy enemy) {
        page.blank();
        page.paragraph(
                0,
                capital(enemy.name()) + (enemy.latin().isEmpty() ? "" : " (" + enemy.latin() + ")") + ", an enemy of "
                        + bees(enemy) + " bees.");
        page.hanging(0, 4, "Looks: " + enemy.looks());
        page.hanging(0, 4, "When: " + enemy.when());
        page.hanging(0, 4, "How much it takes: " + enemy.rate());
        page.hanging(0, 4, "Do: " + enemy.deed());
        page.hanging(0, 4, "Never: " + enemy.never());
        if (!enemy.caution().isEmpty()) {
            page.hanging(0, 4, "Caution: " + enemy.caution());
        }
        page.hanging(
                0,
                4,
                "How well this is known: " + known(enemy) + ": "
                        + enemy.source().citation() + "; " + enemy.locator() + ".");
    }

    private static String known(Enemy enemy) {
        return switch (enemy.basis()) {
            case MEASURED, DERIVED -> "published";
            default -> BasisWords.words(enemy.basis());
        };
    }

    private static String bees(Enemy enemy) {
        return enemy.bees().size() == 2 ? "mason and leafcutter" : String.join("", enemy.bees());
    }

    private static List<String> seasons(Enemy enemy) {
        return enemy.seasons().stream()
                .sorted(Comparator.comparingInt(SEASONS::indexOf))
                .toList();
    }

    private static String capital(String words) {
        int first = words.startsWith("the ") ? "the ".length() : 0;
        return Character.toUpperCase(words.charAt(first)) + words.substring(first + 1);
    }

    /** The text of the object. */
    static String json(EnemiesAnswer answer) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.objects("enemies", answer.enemies(), (entry, enemy) -> {
                entry.text("id", enemy.id());
                entry.text("name", enemy.name());
                entry.text("latin", orNull(enemy.latin()));
                entry.text("kind", enemy.kind());
                entry.texts("bees", enemy.bees().stream().sorted().toList());
                entry.texts("seasons", seasons(enemy));
                entry.text("looks", enemy.looks());
                entry.text("when", enemy.when());
                entry.text("rate", enemy.rate());
                entry.text("do", enemy.deed());
                entry.text("never", enemy.never());
                entry.text("caution", orNull(enemy.caution()));
                entry.text("basis", enemy.basis().word());
                entry.text("citation", enemy.source().citation());
                entry.text("locator", enemy.locator());
            });
            json.text("fingerprint", answer.fingerprint());
        });
    }

    private static @Nullable String orNull(String text) {
        return text.isEmpty() ? null : text;
    }
}

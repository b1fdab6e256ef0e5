package org.nestyear.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.nestyear.core.guest.CardQuestion;
import org.nestyear.core.guest.Enemy;
import org.nestyear.core.guest.Lodger;
import org.nestyear.core.guest.Sign;

/** The tables of words hold together: every sign is somebody's, every row says what to do, what never, and its source. */
class GuestTablesTest {
    @Test
    void everySignBelongsToSomebodyAndNoOtherIsUsed() {
        Set<String> known = new HashSet<>();
        for (Sign sign : GuestTables.signs()) {
            assertThat(known.add(sign.question() + " " + sign.word()))
                    .as(sign.word())
                    .isTrue();
            assertThat(sign.meaning()).isNotBlank();
        }
        Set<String> used = new HashSet<>();
        for (Lodger lodger : GuestTables.lodgers()) {
            for (CardQuestion question : CardQuestion.values()) {
                for (String word : lodger.usual().getOrDefault(question, Set.of())) {
                    used.add(question + " " + word);
                }
                for (String word : lodger.sometimes().getOrDefault(question, Set.of())) {
                    used.add(question + " " + word);
                }
            }
        }
        assertThat(used).containsExactlyInAnyOrderElementsOf(known);
        assertThat(known).hasSizeGreaterThan(40);
    }

    @Test
    void everyLodgerSaysWhatToDo() {
        List<Lodger> lodgers = GuestTables.lodgers();
        assertThat(lodgers).hasSizeGreaterThan(20);
        assertThat(lodgers).extracting(Lodger::id).doesNotHaveDuplicates();
        for (Lodger lodger : lodgers) {
            assertThat(lodger.usual().getOrDefault(CardQuestion.PLUG, Set.of()))
                    .as(lodger.id())
                    .isNotEmpty();
            assertThat(lodger.inFlight()).as(lodger.id()).endsWith(".");
            assertThat(lodger.atRest()).as(lodger.id()).endsWith(".");
            assertThat(lodger.never()).as(lodger.id()).startsWith("Never ").endsWith(".");
            assertThat(lodger.locator()).as(lodger.id()).isNotBlank();
        }
    }

    /** Practice rules: guests are never chilled, bagged or washed; they are returned, not removed. */
    @Test
    void guestsAreLeftInPeace() {
        int guests = 0;
        for (Lodger lodger : GuestTables.lodgers()) {
            if (lodger.kind().isGuest()) {
                guests++;
                assertThat(lodger.verdict()).as(lodger.id()).isEqualTo(Lodger.Verdict.RETURN);
                String all = (lodger.inFlight() + lodger.atRest()).toLowerCase(Locale.ROOT);
                assertThat(all)
                        .as(lodger.id())
                        .doesNotContain("fridge", "chill", "wash", "rinse", "mesh bag", "bleach");
            }
        }
        assertThat(guests).isGreaterThan(9);
    }

    /** Dust, bleach, poison gas, ladders: what can hurt has its caution. */
    @Test
    void everyEnemySaysWhatToDoAndHazardsHaveCautions() {
        List<Enemy> enemies = GuestTables.enemies();
        assertThat(enemies).hasSizeGreaterThan(12);
        assertThat(enemies).extracting(Enemy::id).doesNotHaveDuplicates();
        for (Enemy enemy : enemies) {
            for (String text : List.of(enemy.looks(), enemy.when(), enemy.rate(), enemy.deed(), enemy.never())) {
                assertThat(text).as(enemy.id()).endsWith(".");
            }
            assertThat(enemy.bees()).as(enemy.id()).isNotEmpty().isSubsetOf("mason", "leafcutter");
            assertThat(enemy.seasons()).as(enemy.id()).isNotEmpty().isSubsetOf("spring", "summer", "autumn", "winter");
            assertThat(enemy.never()).as(enemy.id()).startsWith("Never ");
            String deed = enemy.deed().toLowerCase(Locale.ROOT);
            if (deed.contains("bleach")
                    || deed.contains("soapy")
                    || deed.contains("crush")
                    || deed.contains("debris")) {
                assertThat(enemy.caution()).as(enemy.id()).isNotBlank();
            }
        }
    }
}

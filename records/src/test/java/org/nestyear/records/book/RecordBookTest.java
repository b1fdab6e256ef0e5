package org.nestyear.records.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.nestyear.records.OnBothDatabases;

/** The book of records against a real database. */
class RecordBookTest extends OnBothDatabases {
    private static final By ME = new By("keeper", "Ada");
    private static final By HELPER = new By("keeper", "Ben");
    private static final By OTHER = new By("neighbour", "Cleo");
    private static final Sheet SITE = Sheets.get("site");
    private static final Sheet VISIT = Sheets.get("visit");

    private RecordBook book;
    private Instant now = Instant.parse("2026-03-01T10:00:00Z");

    @BeforeEach
    void openBook() {
        book = new RecordBook(source(), () -> now, new EntryCheck(Set.of("Osmia lignaria")));
    }

    @Test
    void anEntryComesBackAsItWasWritten() {
        String site = addSite("Orchard");
        Entry entry = book.find("keeper", SITE, site).orElseThrow();
        assertThat(entry.values())
                .containsExactly(
                        Map.entry("name", "Orchard"),
                        Map.entry("latitude_deg", "40.78"),
                        Map.entry("longitude_deg", "-73.97"),
                        Map.entry("zone", "America/New_York"));
        assertThat(entry.who()).isEqualTo("Ada");
        assertThat(entry.addedAt()).isEqualTo(now);
        assertThat(entry.revision()).isEqualTo(1);
    }

    @Test
    void aCorrectionKeepsTheOldValueAndItsPerson() {
        String visit = addVisit(addSite("Orchard"), "12");
        now = now.plusSeconds(60);
        book.write(
                HELPER,
                "corrected a visit",
                List.of(new Change.Correct(VISIT, visit, 1, with(visit, "more_plugged", "21"))));
        assertThat(book.find("keeper", VISIT, visit).orElseThrow().text("more_plugged"))
                .isEqualTo("21");
        assertThat(book.listCorrections("keeper", VISIT, visit))
                .containsExactly(new Correction(now, "Ben", "more_plugged", "12", "21", false));
    }

    @Test
    void twoWhoCorrectTheSameEntryDoNotOverwriteEachOther() {
        String visit = addVisit(addSite("Orchard"), "12");
        List<Change> mine = List.of(new Change.Correct(VISIT, visit, 1, with(visit, "more_plugged", "13")));
        List<Change> theirs = List.of(new Change.Correct(VISIT, visit, 1, with(visit, "more_plugged", "14")));
        book.write(ME, "corrected", mine);
        assertThatThrownBy(() -> book.write(HELPER, "corrected", theirs))
                .isInstanceOf(ChangedSinceException.class)
                .hasMessageContaining("changed by Ada");
    }

    @Test
    void undoTakesBackAnAdditionACorrectionAndARemovalAndEachCanBeDoneAgain() {
        String site = addSite("Orchard");
        String visit = addVisit(site, "12");
        Act added = book.findLast("keeper").orElseThrow();
        Act undone = book.undo(ME, added.id());
        assertThat(book.list("keeper", Search.of(VISIT))).isEmpty();
        book.undo(ME, undone.id());
        assertThat(book.list("keeper", Search.of(VISIT))).hasSize(1);

        Entry seen = book.find("keeper", VISIT, visit).orElseThrow();
        Act corrected = book.write(
                        ME,
                        "corrected",
                        List.of(new Change.Correct(
                                VISIT, visit, seen.revision(), with(visit, "more_plugged", "21", "mud", "dry"))))
                .orElseThrow();
        Act back = book.undo(ME, corrected.id());
        assertThat(value(visit, "more_plugged")).isEqualTo("12");
        assertThat(value(visit, "mud")).isEmpty();
        book.undo(ME, back.id());
        assertThat(value(visit, "more_plugged")).isEqualTo("21");
        assertThat(value(visit, "mud")).isEqualTo("dry");

        int revision = book.find("keeper", VISIT, visit).orElseThrow().revision();
        Act removed = book.write(ME, "took out", List.of(new Change.Remove(VISIT, visit, revision)))
                .orElseThrow();
        assertThat(book.list("keeper", Search.of(VISIT))).isEmpty();
        Act restored = book.undo(ME, removed.id());
        assertThat(value(visit, "more_plugged")).isEqualTo("21");
        book.undo(ME, restored.id());
        assertThat(book.list("keeper", Search.of(VISIT))).isEmpty();
    }

    @Test
    void whatWasChangedLaterIsNotTakenBackOverIt() {
        String visit = addVisit(addSite("Orchard"), "12");
        Act added = book.findLast("keeper").orElseThrow();
        book.write(ME, "corrected", List.of(new Change.Correct(VISIT, visit, 1, with(visit, "more_plugged", "13"))));
        assertThatThrownBy(() -> book.undo(ME, added.id()))
                .isInstanceOf(ChangedSinceException.class)
                .hasMessageContaining("changed later");
        assertThat(value(visit, "more_plugged")).isEqualTo("13");
    }

    @Test
    void aSiteInUseIsNotTakenOutNorItsAdditionTakenBack() {
        String site = addSite("Orchard");
        Act added = book.findLast("keeper").orElseThrow();
        addVisit(site, "12");
        assertThatThrownBy(() -> book.write(ME, "took out", List.of(new Change.Remove(SITE, site, 1))))
                .isInstanceOf(BadEntryException.class)
                .hasMessageContaining("used by 1 under Visits");
        assertThatThrownBy(() -> book.undo(ME, added.id()))
                .isInstanceOf(ChangedSinceException.class)
                .hasMessageContaining("without their sites");
        assertThat(book.list("keeper", Search.of(SITE))).hasSize(1);
    }

    @Test
    void allOfAnActIsWrittenOrNothing() {
        String site = addSite("Orchard");
        List<Change> changes = List.of(
                new Change.Add(VISIT, RecordBook.newId(), visit(site, "12")),
                new Change.Add(VISIT, RecordBook.newId(), visit(RecordBook.newId(), "13")));
        assertThatThrownBy(() -> book.write(ME, "two visits", changes))
                .isInstanceOfSatisfying(
                        BadEntryException.class, bad -> assertThat(bad.index()).isEqualTo(1));
        assertThat(book.list("keeper", Search.of(VISIT))).isEmpty();
        assertThat(book.listActs("keeper", 10)).hasSize(1);
    }

    @Test
    void sendingAnEntryTwiceMakesOne() {
        String site = addSite("Orchard");
        Change.Add visit = new Change.Add(VISIT, RecordBook.newId(), visit(site, "12"));
        assertThat(book.write(ME, "a visit", List.of(visit))).isPresent();
        assertThat(book.write(ME, "a visit", List.of(visit))).isEmpty();
        assertThat(book.list("keeper", Search.of(VISIT))).hasSize(1);
    }

    @Test
    void nobodySeesOrLinksToAnotherOwnersEntries() {
        String site = addSite("Orchard");
        assertThat(book.find("neighbour", SITE, site)).isEmpty();
        assertThat(book.list("neighbour", Search.of(SITE))).isEmpty();
        assertThatThrownBy(() -> book.write(
                        OTHER, "a visit", List.of(new Change.Add(VISIT, RecordBook.newId(), visit(site, "1")))))
                .isInstanceOf(BadEntryException.class);
        Act mine = book.findLast("keeper").orElseThrow();
        assertThatThrownBy(() -> book.undo(OTHER, mine.id())).isInstanceOf(ChangedSinceException.class);
        assertThatThrownBy(() -> book.write(OTHER, "out", List.of(new Change.Remove(SITE, site, 1))))
                .isInstanceOf(ChangedSinceException.class);
    }

    @Test
    void namesAreUniqueAmongLivingEntries() {
        String site = addSite("Orchard");
        assertThatThrownBy(() -> addSite("Orchard"))
                .isInstanceOf(BadEntryException.class)
                .hasMessageContaining("\"Orchard\" is taken");
        Act removed =
                book.write(ME, "out", List.of(new Change.Remove(SITE, site, 1))).orElseThrow();
        addSite("Orchard");
        assertThatThrownBy(() -> book.undo(ME, removed.id())).isInstanceOf(ChangedSinceException.class);
    }

    @Test
    void everyWrongValueIsRefusedWithWhatWasExpected() {
        String site = addSite("Orchard");
        Map<Map<String, String>, String> wrong = Map.of(
                visit(site, "twelve"), "more_plugged is \"twelve\"; expected a whole number from 0 to 1000000",
                visit(site, "-1"), "expected a whole number from 0",
                visit(site, "12", "on_date", "2026-02-30"), "expected a day such as",
                visit(site, "12", "on_date", "2027-02-03"), "expected a day that has come already",
                visit(site, "12", "species", "Apis mellifera"), "Latin name of a bee in the catalogue",
                visit(site, "12", "mud", "soggy"), "one of wet, damp, dry, none",
                visit(site, "12", "colour", "red"), "have no column \"colour\"",
                visit(site, ""), "a count, the mud or a note",
                visit(site, "12", "all_plugged", "11"), "not fewer than more_plugged",
                visit("", "12"), "need the column site");
        wrong.forEach((values, message) -> assertThatThrownBy(
                        () -> book.write(ME, "a visit", List.of(new Change.Add(VISIT, RecordBook.newId(), values))))
                .isInstanceOf(BadEntryException.class)
                .hasMessageContaining(message));
    }

    /** Random acts and undos against a plain model of what must be there: seeded. */
    @Test
    void whateverIsDoneAndTakenBackTheBookIsAsTheModelSays() {
        String site = addSite("Orchard");
        for (long seed = 0; seed < 20; seed++) {
            Random random = new Random(seed);
            Map<String, String> model = new HashMap<>();
            List<Map<String, String>> before = new ArrayList<>();
            List<String> acts = new ArrayList<>();
            for (int step = 0; step < 25; step++) {
                int kind = random.nextInt(4);
                if (kind == 3 && !acts.isEmpty()) {
                    Act undone = book.undo(ME, acts.remove(acts.size() - 1));
                    if (random.nextBoolean()) {
                        // There and back again.
                        book.undo(ME, undone.id());
                        assertThat(kept())
                                .as("seed %d step %d, done again", seed, step)
                                .isEqualTo(model);
                        book.undo(ME, Objects.requireNonNull(undone.undoes()));
                    }
                    model = new HashMap<>(before.remove(before.size() - 1));
                } else {
                    before.add(new HashMap<>(model));
                    acts.add(step(random, kind, site, model));
                }
                assertThat(kept()).as("seed %d step %d", seed, step).isEqualTo(model);
            }
            List<Change> all = new ArrayList<>();
            book.each("keeper", Search.of(VISIT), e -> all.add(new Change.Remove(VISIT, e.id(), e.revision())));
            book.write(ME, "cleared", all);
        }
    }

    private Map<String, String> kept() {
        Map<String, String> kept = new HashMap<>();
        book.each("keeper", Search.of(VISIT), e -> kept.put(e.id(), e.text("more_plugged")));
        return kept;
    }

    private String step(Random random, int kind, String site, Map<String, String> model) {
        String number = Integer.toString(random.nextInt(1000));
        List<String> ids = model.keySet().stream().sorted().toList();
        if (kind == 0 || ids.isEmpty()) {
            String id = RecordBook.newId();
            model.put(id, number);
            return act(new Change.Add(VISIT, id, visit(site, number)));
        }
        String id = ids.get(random.nextInt(ids.size()));
        Entry entry = book.find("keeper", VISIT, id).orElseThrow();
        if (kind == 1) {
            String other = entry.text("more_plugged").equals(number) ? number + "1" : number;
            model.put(id, other);
            return act(new Change.Correct(VISIT, id, entry.revision(), with(id, "more_plugged", other)));
        }
        model.remove(id);
        return act(new Change.Remove(VISIT, id, entry.revision()));
    }

    private String act(Change change) {
        return book.write(ME, "a step", List.of(change)).orElseThrow().id();
    }

    private String addSite(String name) {
        String id = RecordBook.newId();
        Map<String, String> values =
                Map.of("name", name, "latitude_deg", "40.780", "longitude_deg", "-73.97", "zone", "America/New_York");
        book.write(ME, "a site", List.of(new Change.Add(SITE, id, values)));
        return id;
    }

    private String addVisit(String site, String plugged) {
        String id = RecordBook.newId();
        book.write(ME, "a visit", List.of(new Change.Add(VISIT, id, visit(site, plugged))));
        return id;
    }

    private static Map<String, String> visit(String site, String plugged, String... more) {
        Map<String, String> values =
                new HashMap<>(Map.of("site", site, "on_date", "2026-02-28", "more_plugged", plugged));
        for (int i = 0; i < more.length; i += 2) {
            values.put(more[i], more[i + 1]);
        }
        return values;
    }

    private Map<String, String> with(String visit, String... more) {
        Map<String, String> values =
                new HashMap<>(book.find("keeper", VISIT, visit).orElseThrow().values());
        for (int i = 0; i < more.length; i += 2) {
            values.put(more[i], more[i + 1]);
        }
        return values;
    }

    private String value(String visit, String column) {
        return book.find("keeper", VISIT, visit).orElseThrow().text(column);
    }
}

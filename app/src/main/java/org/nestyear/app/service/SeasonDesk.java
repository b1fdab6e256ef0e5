package org.nestyear.app.service;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.season.Goal;
import org.nestyear.data.TextSource;
import org.nestyear.records.SeasonShelf;
import org.nestyear.records.SeasonSource;
import org.nestyear.records.SeasonSummary;
import org.nestyear.records.StoredSeason;

/**
 * The keeper's current season: opens it, remembers it, plans it. A season that cannot be planned is not kept. Safe for
 * many threads; one plan is computed at a time.
 */
public final class SeasonDesk {
    private static final String OWNER = "keeper";
    private static final int PLANS_KEPT = 6;

    private final SeasonShelf shelf;
    private final PlanService planning;
    private final TextSource demo = Demo.source();
    private final Clock clock;
    private final Map<PlanKey, KeptPlan> plans = new LinkedHashMap<>();

    public SeasonDesk(SeasonShelf shelf, PlanService planning, Clock clock) {
        this.shelf = shelf;
        this.planning = planning;
        this.clock = clock;
    }

    /**
     * The desk with the model, the shipped catalogue, and the records of a folder that exists.
     *
     * @throws Refusal if the records cannot be opened
     */
    public static SeasonDesk at(Path folder, Clock clock) {
        return over(RecordsHome.in(folder).open(), clock);
    }

    /** The desk with the model, the shipped catalogue, and the records of an open database. */
    public static SeasonDesk over(DataSource source, Clock clock) {
        return new SeasonDesk(new SeasonShelf(source, clock), PlanService.standard(), clock);
    }

    /**
     * The current season with its plan, if one has been opened.
     *
     * @throws Refusal if its files have become unreadable since, or no honest answer is possible any more
     */
    public synchronized Optional<OpenSeason> findCurrent() {
        return shelf.findCurrent(OWNER)
                .map(season -> new OpenSeason(
                        season.source().fileName(), season.source() instanceof SeasonSource.Demo, answer(season)));
    }

    /** Opens the invented demonstration season. */
    public synchronized void openDemo() {
        keep(new SeasonSource.Demo(demo.name()), demo);
    }

    /**
     * Opens a season file on this computer.
     *
     * @param typed its path; {@code ~/} stands for the user's home folder
     * @throws Refusal if this cannot be a path
     */
    public synchronized void openPath(String typed) {
        Path path = path(typed);
        WatchedSource source = WatchedSource.of(path);
        Path folder = path.getParent();
        Path name = path.getFileName();
        if (folder == null || name == null) {
            throw refusal("NY-SEASON-PATH", "“" + typed + "” is a folder; expected a season file.");
        }
        keep(new SeasonSource.OnDisk(folder.toString(), name.toString()), source);
    }

    /**
     * Opens a season file that came through the browser.
     *
     * @param name its name without folders
     * @param files content of all files by their names without folders, the season file among them
     * @throws Refusal if it cannot be read or planned
     */
    public synchronized void openUpload(String name, Map<String, byte[]> files) {
        UploadedSource source = UploadedSource.of(name, files);
        PlanAnswer answer = plan(source, null);
        Map<String, String> texts = new HashMap<>();
        files.forEach((file, bytes) -> texts.put(file, new String(bytes, StandardCharsets.UTF_8)));
        texts.keySet().retainAll(source.read());
        String season = texts.remove(name);
        if (season == null) {
            throw new IllegalStateException("a season was planned without being read");
        }
        remember(shelf.open(OWNER, new SeasonSource.Uploaded(name, season, texts)), answer, source);
    }

    /**
     * Opens a season again that was opened before.
     *
     * @throws Refusal if there is none with this id
     */
    public synchronized void openAgain(String id) {
        if (!shelf.reopen(OWNER, id)) {
            throw refusal("NY-SEASON-GONE", "That season is not among those opened before.");
        }
    }

    /** Plans the current season for this aim from now on; without a season nothing changes. */
    public synchronized void chooseGoal(Goal goal) {
        shelf.findCurrent(OWNER).ifPresent(season -> shelf.chooseGoal(OWNER, season.id(), goal));
    }

    /** Every season opened so far, the current one first. */
    public List<EarlierSeason> list() {
        List<SeasonSummary> all = shelf.list(OWNER);
        return all.stream()
                .map(s -> new EarlierSeason(s.id(), name(s), s.openedAt(), s.equals(all.get(0))))
                .toList();
    }

    /** Text of the demo's season file. */
    public String demoText() {
        try {
            return new String(demo.bytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String name(SeasonSummary season) {
        String folder = season.folder();
        return folder == null
                ? season.fileName()
                : Path.of(folder, season.fileName()).toString();
    }

    private static Refusal refusal(String code, String sentence) {
        return new Refusal(Refusal.Kind.BAD_INPUT, code, "", sentence, "");
    }

    private static Path path(String typed) {
        String text = typed.strip();
        if (text.startsWith("~/")) {
            text = System.getProperty("user.home") + text.substring(1);
        }
        try {
            return Path.of(text).toAbsolutePath().normalize();
        } catch (InvalidPathException e) {
            throw refusal("NY-SEASON-PATH", "“" + typed + "” cannot be a path; expected the path of a season file.");
        }
    }

    // Planned before it is kept: what cannot be planned leaves no trace.
    private void keep(SeasonSource source, TextSource text) {
        PlanAnswer answer = plan(text, null);
        remember(shelf.open(OWNER, source), answer, text);
    }

    private PlanAnswer answer(StoredSeason season) {
        @Nullable KeptPlan kept = plans.get(PlanKey.of(season));
        if (kept != null && kept.isFresh(clock)) {
            return kept.answer();
        }
        TextSource text = text(season.source());
        PlanAnswer answer = plan(text, season.goal());
        remember(season, answer, text);
        return answer;
    }

    // The day it is where the computer stands; the season's own zone is known only once its file has been read.
    private PlanAnswer plan(TextSource text, @Nullable Goal goal) {
        return planning.plan(text, new PlanRequest(LocalDate.now(clock), null, goal));
    }

    private TextSource text(SeasonSource source) {
        if (source instanceof SeasonSource.OnDisk disk) {
            return WatchedSource.of(Path.of(disk.folder(), disk.fileName()));
        }
        if (source instanceof SeasonSource.Uploaded upload) {
            Map<String, byte[]> files = new HashMap<>();
            upload.files().forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
            files.put(upload.fileName(), upload.seasonText().getBytes(StandardCharsets.UTF_8));
            return UploadedSource.of(upload.fileName(), files);
        }
        return demo;
    }

    private void remember(StoredSeason season, PlanAnswer answer, TextSource text) {
        Map<Path, String> stamps = text instanceof WatchedSource watched ? watched.stamps() : Map.of();
        plans.remove(PlanKey.of(season));
        plans.put(PlanKey.of(season), new KeptPlan(answer, stamps, LocalDate.now(clock)));
        if (plans.size() > PLANS_KEPT) {
            plans.remove(plans.keySet().iterator().next());
        }
    }

    private record PlanKey(String id, @Nullable Goal goal) {
        static PlanKey of(StoredSeason season) {
            return new PlanKey(season.id(), season.goal());
        }
    }

    /** A plan with what it must be thrown away for: a changed file, or another day where it was made for that day. */
    private record KeptPlan(PlanAnswer answer, Map<Path, String> stamps, LocalDate madeOn) {
        boolean isFresh(Clock clock) {
            boolean sameFiles = stamps.entrySet().stream()
                    .allMatch(file -> WatchedSource.stamp(file.getKey()).equals(file.getValue()));
            boolean ownDay = !answer.plan().today().equals(madeOn);
            return sameFiles && (ownDay || LocalDate.now(clock).equals(madeOn));
        }
    }
}

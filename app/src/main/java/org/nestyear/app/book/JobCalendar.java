package org.nestyear.app.book;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.EitherBee;
import org.nestyear.app.service.PlanAnswer;
import org.nestyear.app.service.PlanRequest;
import org.nestyear.app.service.PlanService;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.service.Wording;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.season.SeasonFrame;
import org.nestyear.data.exchange.CalendarFeed;
import org.nestyear.data.exchange.CalendarJob;
import org.nestyear.data.exchange.FeedSecret;
import org.nestyear.data.exchange.JobRevision;
import org.nestyear.records.book.Act;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.FeedLinks;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/** The jobs of every site's season as one calendar, and the secret links under which others may read it. */
public final class JobCalendar {
    private static final int REFRESH_HOURS = 6;
    private static final SecureRandom RANDOM = new SecureRandom();

    private final BookDesk desk;
    private final RecordsDesk records;
    private final Path folder;
    private @Nullable Made made;

    /**
     * The calendar of these records.
     *
     * @param folder their folder, in which weather tables lie
     */
    public JobCalendar(RecordsDesk records, Path folder) {
        this.records = records;
        this.desk = records.desk();
        this.folder = folder;
    }

    /**
     * A calendar as it was made.
     *
     * @param text iCalendar
     * @param jobs how many jobs it holds
     * @param unplanned a line for each season that could not be planned, and why
     */
    public record Made(LocalDate today, String lastAct, String text, int jobs, List<String> unplanned) {
        public Made {
            unplanned = List.copyOf(unplanned);
        }
    }

    /** The calendar on a day; made anew only when the day or the records have changed. */
    public synchronized Made on(LocalDate today) {
        List<Act> acts = desk.listActs(1);
        String last = acts.isEmpty() ? "" : acts.get(0).id();
        Made before = made;
        if (before != null && before.today().equals(today) && before.lastAct().equals(last)) {
            return before;
        }
        List<CalendarJob> jobs = new ArrayList<>();
        List<String> unplanned = new ArrayList<>();
        int year = SeasonFrame.planningFrom(today).year();
        for (Entry site : desk.list(Search.of(Sheets.get("site")))) {
            for (String species : species(site, year)) {
                try {
                    PlanAnswer plan = PlanService.standard()
                            .plan(
                                    KeptSeason.of(records, folder, site.text(Sheet.NAME), species, year)
                                            .asOf(today, false),
                                    PlanRequest.asWritten(today));
                    Wording words = new Wording(UnitSystem.METRIC, year);
                    plan.plan().jobs().forEach(job -> jobs.add(job(site, species, year, job, words)));
                } catch (Refusal e) {
                    unplanned.add(site.text(Sheet.NAME) + ", " + species + ": " + e.sentence());
                }
            }
        }
        Instant changed = today.atStartOfDay().toInstant(ZoneOffset.UTC);
        if (!acts.isEmpty() && acts.get(0).at().isAfter(changed)) {
            changed = acts.get(0).at().truncatedTo(ChronoUnit.SECONDS);
        }
        Instant earliest = Instant.parse("2020-01-01T00:00:00Z");
        String text = CalendarFeed.write(
                new CalendarFeed.Details(
                        "Nestyear: jobs",
                        "What the bees want done, site by site; each job with its window and its reason.",
                        REFRESH_HOURS),
                jobs,
                JobRevision.at(jobs, changed.isBefore(earliest) ? earliest : changed));
        Made now = new Made(today, last, text, jobs.size(), unplanned);
        made = now;
        return now;
    }

    /**
     * Writes the calendar of a day as a file.
     *
     * @throws Refusal if something of that name is there, or it cannot be written
     */
    public Made write(Path file, LocalDate today) {
        Made calendar = on(today);
        byte[] text = calendar.text().getBytes(StandardCharsets.UTF_8);
        RecordsDesk.toFile(file, out -> {
            out.write(text);
            return text.length;
        });
        return calendar;
    }

    // Leafcutters have no plan of jobs yet.
    private List<String> species(Entry site, int year) {
        return desk
                .list(Search.of(Sheets.get("batch")).where("site", site.id()).where("year", Integer.toString(year)))
                .stream()
                .map(batch -> batch.text("species"))
                .distinct()
                .filter(species -> !EitherBee.isLeafcutter(EitherBee.named(species)))
                .toList();
    }

    private static CalendarJob job(Entry site, String species, int year, Job job, Wording words) {
        Phrase caution = job.caution();
        return new CalendarJob(
                site.id(),
                site.text(Sheet.NAME),
                species,
                year,
                job.id(),
                words.phrase(job.title()),
                job.from(),
                job.to(),
                words.phrase(job.number()),
                words.phrase(job.reason()),
                null,
                caution == null ? null : words.phrase(caution),
                List.of());
    }

    /**
     * A link to this calendar.
     *
     * @param id made by the program
     * @param name whom it was given to
     * @param madeAt when
     * @param revoked whether it was taken back
     */
    public record Link(String id, String name, Instant madeAt, boolean revoked) {}

    /**
     * Makes a secret link.
     *
     * @param name whom it is for
     * @return the secret end of its address; it cannot be shown again
     * @throws Refusal if no name is given
     */
    public String makeLink(String name) {
        if (name.isBlank() || name.strip().length() > 80) {
            throw Refusal.usage("a calendar link needs a name; expected whom it is for, in at most 80 letters.", "");
        }
        FeedSecret secret = FeedSecret.make(RANDOM);
        desk.feeds().add(desk.owner(), name.strip(), secret.hash());
        return secret.text();
    }

    /** All links, newest first. */
    public List<Link> links() {
        return desk.feeds().list(desk.owner()).stream()
                .map(link -> new Link(link.id(), link.name(), link.madeAt(), link.revoked()))
                .toList();
    }

    /** Takes a link back; false if there is none. */
    public boolean revoke(String id) {
        return desk.feeds().revoke(desk.owner(), id);
    }

    /** The calendar behind a secret on a day, or empty if no living link has it. */
    public Optional<String> open(String secret, LocalDate today) {
        FeedSecret typed;
        try {
            typed = new FeedSecret(secret);
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
        FeedLinks feeds = desk.feeds();
        return feeds.findOwner(typed.hash())
                .filter(desk.owner()::equals)
                .map(owner -> on(today).text());
    }
}

package org.nestyear.app.service;

import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.nestyear.records.Backups;
import org.nestyear.records.DatabaseAddress;
import org.nestyear.records.UnreadableRecordsException;

/** Copies the records once a day while the pages are shown. */
public final class DailyCopies {
    private static final Duration PAUSE = Duration.ofMinutes(10);

    private final DatabaseAddress.InFolder records;
    private final Clock clock;
    private final Consumer<String> complaint;
    private @Nullable LocalDate complained;

    private DailyCopies(DatabaseAddress.InFolder records, Clock clock, Consumer<String> complaint) {
        this.records = records;
        this.clock = clock;
        this.complaint = complaint;
    }

    /**
     * Makes today's copy in the background, and that of every later day in its first minutes, until the program ends. Records
     * on a server are left to the server.
     *
     * @param home records that are open
     * @param complaint takes a sentence on a day whose copy cannot be made
     */
    public static void start(RecordsHome home, Clock clock, Consumer<String> complaint) {
        home.file().ifPresent(file -> {
            DailyCopies copies = new DailyCopies(file, clock, complaint);
            Thread thread = new Thread(copies::runOn, "daily-copy");
            thread.setDaemon(true);
            thread.start();
        });
    }

    private void runOn() {
        try {
            while (true) {
                copyToday();
                Thread.sleep(PAUSE.toMillis());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    // A day's copy is tried again until it can be made; the keeper is told once a day.
    private void copyToday() {
        LocalDate today = LocalDate.now(clock);
        try {
            Backups.daily(records, today);
        } catch (UnreadableRecordsException e) {
            if (!today.equals(complained)) {
                complained = today;
                complaint.accept("today's copy of the records could not be made: " + e.sentence());
            }
        }
    }
}

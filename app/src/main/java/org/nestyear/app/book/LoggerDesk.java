package org.nestyear.app.book;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nestyear.app.service.Refusal;
import org.nestyear.core.weather.LoggedTemperature;
import org.nestyear.core.weather.LoggedTemperatures;
import org.nestyear.data.DataFault;
import org.nestyear.data.TemperatureLogCsv;
import org.nestyear.data.TextSource;
import org.nestyear.records.book.Entry;
import org.nestyear.records.book.RecordBook;
import org.nestyear.records.book.Search;
import org.nestyear.records.book.Sheet;
import org.nestyear.records.book.Sheets;

/** Readings of a logger, looked at before they are written. */
public final class LoggerDesk {
    private static final String READING = "reading";
    private static final int MOST_FAULTS = 20;
    private static final int GAPS = 5;

    private final BookDesk desk;

    /** Loggers of these records. */
    public LoggerDesk(BookDesk desk) {
        this.desk = desk;
    }

    /**
     * Where a logger lay.
     *
     * @param site name of the site
     * @param place fridge, warm room and so on
     * @param logger its name, or empty
     * @param batch name of the batch beside it, or empty
     */
    public record Lying(String site, String place, String logger, String batch) {}

    /**
     * What a log holds.
     *
     * @param readings how many readings it holds
     * @param from time of the first, local to the site
     * @param to time of the last
     * @param lowestC lowest temperature
     * @param highestC highest temperature
     * @param gaps how many gaps there are
     * @param gapWords the first gaps, in words
     * @param there readings that are in the records already
     * @param other times at which the records hold another temperature; these stay as they are
     * @param fresh what would be written
     */
    public record Preview(
            int readings,
            LocalDateTime from,
            LocalDateTime to,
            double lowestC,
            double highestC,
            int gaps,
            List<String> gapWords,
            int there,
            int other,
            List<TypedRow> fresh) {
        public Preview {
            gapWords = List.copyOf(gapWords);
            fresh = List.copyOf(fresh);
        }
    }

    /**
     * A log as far as it could be read.
     *
     * @param preview what it holds; empty where it has faults
     * @param faults what is wrong, with its line
     */
    public record Looked(Optional<Preview> preview, List<String> faults) {
        public Looked {
            faults = List.copyOf(faults);
        }
    }

    /** The places a logger may lie. */
    public static List<String> places() {
        return Sheets.get(READING).column("place").orElseThrow().words();
    }

    /**
     * Looks at a log; nothing is written.
     *
     * @param name name of the file, for messages
     * @throws Refusal if where it lay is not understood
     */
    public Looked look(Lying lying, String name, String text) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("site", lying.site());
        typed.put("place", lying.place());
        typed.put("logger", lying.logger());
        typed.put("batch", lying.batch());
        Sheet sheet = Sheets.get(READING);
        Map<String, String> at = BookDesk.guarded(() -> {
            Map<String, String> values = Typed.values(sheet, typed, desk.names());
            Map<String, String> tried = new LinkedHashMap<>(values);
            tried.put("read_at", "1900-01-01T00:00");
            tried.put("temperature_c", "0");
            desk.book().check().plain(sheet, tried, desk.book().now(), 0);
            return values;
        });
        List<String> faults = new ArrayList<>();
        String left = text;
        while (faults.size() < MOST_FAULTS) {
            try {
                LoggedTemperatures log = TemperatureLogCsv.read(TextSource.ofTexts(name, Map.of(name, left)));
                return faults.isEmpty()
                        ? new Looked(Optional.of(preview(at, log)), faults)
                        : new Looked(Optional.empty(), faults);
            } catch (DataFault fault) {
                Refusal refusal = Refusal.of(fault);
                String advice = refusal.advice().isEmpty() ? "" : " " + refusal.advice();
                String said = refusal.place() + ": " + refusal.sentence() + advice + " (" + refusal.code() + ")";
                int line = fault.at().line();
                if (line <= 1 || line > left.lines().count() || faults.contains(said)) {
                    faults.add(said);
                    break;
                }
                faults.add(said);
                left = without(left, line);
            }
        }
        return new Looked(Optional.empty(), faults);
    }

    // The line is emptied and not cut out, so that the faults after it keep their numbers.
    private static String without(String text, int line) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        lines.set(line - 1, "");
        return String.join("\n", lines);
    }

    private Preview preview(Map<String, String> at, LoggedTemperatures log) {
        Map<String, Double> there = there(at, log);
        int same = 0;
        int other = 0;
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        List<TypedRow> fresh = new ArrayList<>();
        for (LoggedTemperature reading : log.readings()) {
            lowest = Math.min(lowest, reading.celsius());
            highest = Math.max(highest, reading.celsius());
            String time = Sheets.get(READING)
                    .column("read_at")
                    .orElseThrow()
                    .plain(reading.time().toString())
                    .orElseThrow();
            Double kept = there.get(time);
            if (kept == null) {
                Map<String, String> row = new LinkedHashMap<>(at);
                row.put("read_at", time);
                row.put("temperature_c", plain(reading.celsius()));
                fresh.add(new TypedRow(RecordBook.newId(), 0, row));
            } else if (plain(kept).equals(plain(reading.celsius()))) {
                same++;
            } else {
                other++;
            }
        }
        return new Preview(
                log.readings().size(),
                log.first(),
                log.last(),
                lowest,
                highest,
                log.gaps().size(),
                log.gaps().stream()
                        .limit(GAPS)
                        .map(gap -> gap.from().toString().replace('T', ' ') + " to "
                                + gap.to().toString().replace('T', ' '))
                        .toList(),
                same,
                other,
                fresh);
    }

    private Map<String, Double> there(Map<String, String> at, LoggedTemperatures log) {
        Search search = Search.of(Sheets.get(READING));
        for (String column : List.of("site", "place", "logger", "batch")) {
            search = search.where(column, at.getOrDefault(column, ""));
        }
        search = search.between(
                log.first().toLocalDate().toString(), log.last().toLocalDate().toString());
        Map<String, Double> there = new HashMap<>();
        for (Entry entry : desk.list(search)) {
            there.put(entry.text("read_at"), entry.number("temperature_c").orElse(Double.NaN));
        }
        return there;
    }

    // A hundredth of a degree is finer than any probe; Fahrenheit would bring sixteen digits.
    private static String plain(double celsius) {
        String text = BigDecimal.valueOf(celsius)
                .setScale(2, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
        return text.equals("-0") ? "0" : text;
    }

    /**
     * Writes what was looked at, all of it or nothing.
     *
     * @param act made before the form was sent, so that sending it twice does it once
     */
    public SaveAnswer save(String who, String act, Lying lying, Preview preview) {
        String words = preview.fresh().size() + " readings, " + lying.place() + ", " + lying.site();
        return new EntryDesk(desk).saveChecked(who, READING, act, words, preview.fresh());
    }
}

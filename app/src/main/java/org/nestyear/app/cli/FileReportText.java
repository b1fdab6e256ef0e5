package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.app.service.FileReport;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.Wording;
import org.nestyear.core.season.Batch;
import org.nestyear.core.season.Nests;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonInputs;
import org.nestyear.core.weather.Gap;

/** A look at a file in words. */
final class FileReportText {
    /** Gaps written out; a longer list says no more. */
    private static final int GAPS_SHOWN = 12;

    private FileReportText() {}

    /** The lines of the report: what the file holds, its gaps, its faults. */
    static String of(FileReport report, Wording words) {
        List<String> lines = new ArrayList<>();
        SeasonInputs season = report.season();
        if (season != null) {
            season(lines, season, words);
        }
        FileReport.Days days = report.weather();
        if (days != null) {
            weather(lines, days, words);
        }
        for (Refusal fault : report.faults()) {
            lines.add(String.valueOf(fault.getMessage()));
        }
        if (report.moreFaults() > 0) {
            lines.add("and " + Wording.number(report.moreFaults(), 0) + " more faults.");
        }
        int faults = report.faults().size() + report.moreFaults();
        String verdict = faults == 0 ? "no fault" : faults == 1 ? "1 fault" : Wording.number(faults, 0) + " faults";
        lines.add(0, report.file() + ": " + verdict + ".");
        return String.join("\n", lines) + "\n";
    }

    private static void season(List<String> lines, SeasonInputs season, Wording words) {
        lines.add("A season at " + season.site().name() + ", planned for " + words.dateWithYear(season.today())
                + ", with the aim \"" + season.goal().word() + "\".");
        for (Batch batch : season.batches()) {
            lines.add("Bees: " + Wording.number(batch.females(), 0) + " female and "
                    + Wording.number(batch.males(), 0) + " male cocoons of " + batch.species() + " ("
                    + batch.origin() + "), wintered: " + batch.wintered().word() + ".");
        }
        int tunnels = season.nests().stream().mapToInt(Nests::count).sum();
        lines.add("Free tunnels: " + Wording.number(tunnels, 0) + ".");
        lines.add("Plants: "
                + String.join(
                        ", ",
                        season.plants().stream().map(FileReportText::plant).toList())
                + "; other bloom " + (season.community() == null ? "not given, so assumed." : "given."));
    }

    private static String plant(Plant plant) {
        int dates = plant.pastBloom().size();
        String past = dates == 0 ? "" : dates == 1 ? "1 past date" : dates + " past dates";
        String both = (plant.target() ? "target" : "") + (plant.target() && dates > 0 ? ", " : "") + past;
        return plant.name() + (both.isEmpty() ? "" : " (" + both + ")");
    }

    private static void weather(List<String> lines, FileReport.Days days, Wording words) {
        lines.add("Weather: " + Wording.number(days.days(), 0) + " days with both temperatures, "
                + words.dateWithYear(days.first()) + " to " + words.dateWithYear(days.last()) + ".");
        lines.add("Columns: " + String.join(", ", days.columns())
                + (days.ignored().isEmpty() ? "." : "; not used: " + String.join(", ", days.ignored()) + "."));
        lines.addAll(days.notes());
        lines.add(
                days.completeYears().isEmpty()
                        ? "No calendar year is complete."
                        : "Complete calendar years: "
                                + String.join(
                                        ", ",
                                        days.completeYears().stream()
                                                .map(String::valueOf)
                                                .toList())
                                + ".");
        List<Gap> gaps = days.gaps();
        lines.add(gaps.isEmpty() ? "No gap." : gaps.size() + (gaps.size() == 1 ? " gap:" : " gaps:"));
        for (Gap gap : gaps.subList(0, Math.min(gaps.size(), GAPS_SHOWN))) {
            lines.add("  " + gap.from()
                    + (gap.days() == 1 ? " (1 day)" : " to " + gap.to() + " (" + gap.days() + " days)"));
        }
        if (gaps.size() > GAPS_SHOWN) {
            lines.add("  and " + (gaps.size() - GAPS_SHOWN) + " more.");
        }
    }
}

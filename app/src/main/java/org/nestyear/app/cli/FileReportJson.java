package org.nestyear.app.cli;

import org.nestyear.app.service.FileReport;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.Version;
import org.nestyear.core.season.Nests;
import org.nestyear.core.season.Plant;
import org.nestyear.core.season.SeasonInputs;

/** A look at a file as one JSON object; its schema is {@code schema/check-file.schema.json}. */
final class FileReportJson {
    private FileReportJson() {}

    /** The text of the object. */
    static String of(FileReport report) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("file", report.file());
            json.text("kind", report.kind());
            FileReport.Days days = report.weather();
            if (days != null) {
                json.object("weather", weather -> weather(weather, days));
            }
            SeasonInputs season = report.season();
            if (season != null) {
                json.object("season", members -> season(members, season));
            }
            json.objects("faults", report.faults(), FileReportJson::fault);
            json.whole("more_faults", report.moreFaults());
        });
    }

    private static void weather(JsonText json, FileReport.Days days) {
        json.date("first", days.first());
        json.date("last", days.last());
        json.whole("days", days.days());
        json.wholes("complete_years", days.completeYears());
        json.objects("gaps", days.gaps(), (each, gap) -> {
            each.date("from", gap.from());
            each.date("to", gap.to());
            each.whole("days", gap.days());
        });
        json.texts("columns", days.columns());
        json.texts("ignored_columns", days.ignored());
        json.texts("notes", days.notes());
    }

    private static void season(JsonText json, SeasonInputs season) {
        json.text("site", season.site().name());
        json.date("today", season.today());
        json.text("goal", season.goal().word());
        json.objects("batches", season.batches(), (each, batch) -> {
            each.text("species", batch.species());
            each.whole("females", batch.females());
            each.whole("males", batch.males());
            each.text("wintered", batch.wintered().word());
        });
        json.whole("tunnels", season.nests().stream().mapToInt(Nests::count).sum());
        json.texts("plants", season.plants().stream().map(Plant::name).toList());
        json.whole(
                "past_bloom_dates",
                season.plants().stream()
                        .mapToInt(plant -> plant.pastBloom().size())
                        .sum());
        json.flag("community_given", season.community() != null);
    }

    private static void fault(JsonText json, Refusal fault) {
        json.text("code", fault.code());
        json.text("place", fault.place().isEmpty() ? null : fault.place());
        json.text("sentence", fault.sentence());
        json.text("advice", fault.advice().isEmpty() ? null : fault.advice());
    }
}

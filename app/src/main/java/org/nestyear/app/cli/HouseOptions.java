package org.nestyear.app.cli;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.FacingQuestion;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.Spelling;
import org.nestyear.core.place.HorizonPoint;
import org.nestyear.core.place.Site;
import picocli.CommandLine.Option;

/** Options that tell where a house stands, in place of a season file. */
final class HouseOptions {
    private static final Pattern POINT = Pattern.compile("(\\d+\\.?\\d*):(\\d+\\.?\\d*)");

    @Option(names = "--lat", paramLabel = "DEGREES", description = "Degrees north, -90 to 90, in place of FILE.")
    @Nullable
    String latitude;

    @Option(names = "--lon", paramLabel = "DEGREES", description = "Degrees east, -180 to 180.")
    @Nullable
    String longitude;

    @Option(names = "--zone", paramLabel = "ZONE", description = "Time zone, such as America/New_York.")
    @Nullable
    String zone;

    @Option(names = "--weather", paramLabel = "TABLE", description = "Daily weather of past years.")
    @Nullable
    Path weather;

    @Option(names = "--elevation-m", paramLabel = "METRES", description = "Metres above sea level (default 0).")
    @Nullable
    String elevation;

    @Option(names = "--faces", paramLabel = "DEGREES", description = "Where the front looks now, clockwise from north.")
    @Nullable
    String faces;

    @Option(
            names = "--horizon",
            paramLabel = "POINT",
            description = "A sighted point of the skyline, direction:height in degrees, such as 60:12; once for each.")
    List<String> horizon = List.of();

    /** True when none of them is given. */
    boolean isUntold() {
        return Stream.of(latitude, longitude, zone, weather, elevation, faces).allMatch(given -> given == null)
                && horizon.isEmpty();
    }

    /** The place they tell. */
    FacingQuestion.OfPlace told() {
        if (latitude == null || longitude == null || zone == null || weather == null) {
            throw unclear();
        }
        return new FacingQuestion.OfPlace(
                new Site(
                        "",
                        Arguments.latitude("--lat", latitude),
                        Arguments.number("--lon", longitude, -180, 180, "degrees east"),
                        elevation == null ? 0 : Arguments.number("--elevation-m", elevation, -430, 6000, "m"),
                        zone(zone),
                        faces == null ? null : Arguments.number("--faces", faces, 0, 360, "degrees"),
                        skyline(),
                        null,
                        null),
                weather);
    }

    static Refusal unclear() {
        return Refusal.usage(
                "it is not clear where the house stands; expected either FILE, or --lat DEGREES, --lon DEGREES, --zone ZONE"
                        + " and --weather TABLE together.",
                "");
    }

    private static ZoneId zone(String text) {
        try {
            return ZoneId.of(text);
        } catch (DateTimeException e) {
            throw Refusal.usage(
                    "--zone is \"" + text + "\"; expected a time zone such as America/New_York.",
                    Spelling.advice(text, List.copyOf(ZoneId.getAvailableZoneIds())));
        }
    }

    private List<HorizonPoint> skyline() {
        List<HorizonPoint> points = new ArrayList<>();
        for (String text : horizon) {
            Matcher point = POINT.matcher(text.strip());
            if (!point.matches()) {
                throw Refusal.usage(
                        "--horizon is \"" + text
                                + "\"; expected a direction and a height in degrees with a colon between,"
                                + " such as 60:12.",
                        "");
            }
            points.add(new HorizonPoint(
                    Arguments.number("--horizon", point.group(1), 0, 360, "degrees clockwise from north"),
                    Arguments.number("--horizon", point.group(2), 0, 90, "degrees above the level")));
        }
        points.sort(Comparator.comparingDouble(HorizonPoint::azimuthDeg));
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i - 1).azimuthDeg() == points.get(i).azimuthDeg()) {
                throw Refusal.usage(
                        "--horizon has two heights for "
                                + Math.round(points.get(i).azimuthDeg()) + " degrees; expected each direction once.",
                        "");
            }
        }
        return points;
    }
}

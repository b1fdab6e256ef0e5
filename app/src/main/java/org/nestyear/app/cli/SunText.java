package org.nestyear.app.cli;

import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.SunAnswer;
import org.nestyear.app.service.SunQuestion;
import org.nestyear.app.service.Wording;
import org.nestyear.core.sun.SunPosition;
import org.nestyear.core.sun.SunTimes;

/** An answer about the sun in words. */
final class SunText {
    static final List<String> METHODS = List.of(
            "Position and times: Reda & Andreas 2004, Solar Energy 76:577",
            "Clear sky: Haurwitz 1945, J. Meteorology 2:154, parted after Erbs, Klein & Duffie 1982, Solar Energy"
                    + " 28:293",
            "Front: Liu & Jordan 1963, Solar Energy 7:53, ground throwing back a fifth of the light");

    private SunText() {}

    /** The lines of the answer. */
    static String of(SunAnswer answer, Wording words) {
        SunQuestion question = answer.question();
        SunPosition sun = answer.position();
        StringBuilder text = new StringBuilder();
        text.append(sentence(answer, words)).append('\n');
        text.append(times(answer)).append('\n');
        if (sun.elevationDeg() > 0) {
            text.append("Under a clear sky the level ground gets ")
                    .append(Wording.number(answer.clearSkyWm2(), 0))
                    .append(" W/m²");
            if (answer.facadeWm2() != null && question.facesDeg() != null) {
                text.append(", a front that looks to ")
                        .append(Wording.number(question.facesDeg(), 0))
                        .append("° gets ")
                        .append(Wording.number(answer.facadeWm2(), 0))
                        .append(" W/m²");
            }
            text.append(".\n");
        }
        text.append('\n');
        METHODS.forEach(method -> text.append(method).append(".\n"));
        return text.toString();
    }

    private static String sentence(SunAnswer answer, Wording words) {
        SunPosition sun = answer.position();
        OffsetDateTime at = answer.question().at();
        String when = "On " + words.dateWithYear(at.toLocalDate()) + " at " + clock(at) + " (UTC"
                + (at.getOffset().getTotalSeconds() == 0 ? "" : at.getOffset()) + ") the sun ";
        double height = sun.elevationDeg();
        if (height <= 0) {
            return when + "is " + Wording.number(-height, 1) + "° below the horizon.";
        }
        return when + "stands " + Wording.number(height, 1) + "° above the horizon (zenith angle "
                + Wording.number(sun.zenithDeg(), 3) + "°, of which the air lifts it "
                + Wording.number(sun.refractionDeg(), 3) + "°), in direction " + Wording.number(sun.azimuthDeg(), 1)
                + "° (0 is north, 90 east).";
    }

    private static String times(SunAnswer answer) {
        if (answer.times() instanceof SunTimes.StaysUp) {
            return "It does not set that day.";
        }
        OffsetDateTime rises = answer.sunrise();
        OffsetDateTime sets = answer.sunset();
        if (rises == null || sets == null) {
            return "It does not rise that day.";
        }
        return "It rises at " + clock(rises) + " and sets at " + clock(sets) + ", over a level horizon.";
    }

    private static String clock(@Nullable OffsetDateTime time) {
        return time == null ? "" : two(time.getHour()) + ":" + two(time.getMinute());
    }

    private static String two(int number) {
        return number < 10 ? "0" + number : Integer.toString(number);
    }
}

package org.nestyear.app.service;

import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.winter.LeafcutterWinter;
import org.nestyear.core.advice.winter.WinterCheck;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.weather.LoggedTemperatures;
import org.nestyear.data.CatalogueFiles;

/**
 * How bees have wintered so far.
 *
 * @param from first reading of the log
 * @param to last reading
 * @param gaps gaps in the log that were bridged
 * @param chillDays days of cold so far, d
 * @param mason what is worked out for mason bees, or null for leafcutters
 * @param findings most pressing first
 */
public record WinterAnswer(
        WinterQuestion question,
        LocalDateTime from,
        LocalDateTime to,
        int gaps,
        double chillDays,
        @Nullable WinterCheck mason,
        List<Finding> findings,
        List<Parameter> basis,
        String fingerprint) {
    /** Longest gap that a straight line may bridge, hours; numerical. */
    private static final double LONGEST_GAP_HOURS = 72;

    private static final int DAY_HOURS = 24;

    public WinterAnswer {
        findings = List.copyOf(findings);
        basis = List.copyOf(basis);
    }

    /**
     * Judges a store.
     *
     * @throws Refusal if the log is wrong, has a gap of more than three days, or is shorter than a day
     */
    public static WinterAnswer of(WinterQuestion question) {
        LoggedTemperatures log = TemperatureLog.read(question.log(), LONGEST_GAP_HOURS);
        double[] hourlyC = log.hourlyC();
        int adultHours = adultHours(question, log);
        if (hourlyC.length - adultHours < DAY_HOURS) {
            throw new Refusal(
                    Refusal.Kind.BAD_INPUT,
                    "NY-LOG-SHORT",
                    question.log().toString(),
                    "the log runs from " + log.first() + " to " + log.last() + "; expected at least a day of cold.",
                    question.cold() == null
                            ? ""
                            : "Maybe the day the cold began, " + question.cold() + ", is too late.");
        }
        boolean leafcutter = EitherBee.isLeafcutter(question.species());
        ReadLog read = new ReadLog(question.species().parameters());
        WinterCheck mason = leafcutter
                ? null
                : WinterCheck.of(
                        question.species().parameters(),
                        question.kept(),
                        question.before(),
                        hourlyC,
                        adultHours,
                        question.air());
        List<Finding> findings = mason == null ? LeafcutterWinter.findings(read, hourlyC) : mason.findings();
        double chill =
                mason == null ? question.before().days() + LeafcutterWinter.coldDays(read, hourlyC) : mason.chillDays();
        return new WinterAnswer(
                question,
                log.first(),
                log.last(),
                log.gaps().size(),
                chill,
                mason,
                findings,
                basis(mason, findings, read),
                fingerprint(question, hourlyC));
    }

    private static int adultHours(WinterQuestion question, LoggedTemperatures log) {
        return question.cold() == null
                ? 0
                : (int) Math.max(
                        0, ChronoUnit.HOURS.between(log.first(), question.cold().atStartOfDay()));
    }

    private static List<Parameter> basis(@Nullable WinterCheck mason, List<Finding> findings, ReadLog read) {
        Set<Parameter> basis = new LinkedHashSet<>(mason == null ? read.read() : mason.basis());
        findings.forEach(finding -> basis.addAll(finding.basis()));
        return List.copyOf(basis);
    }

    private static String fingerprint(WinterQuestion question, double[] hourlyC) {
        Fingerprint print = new Fingerprint(PlanService.catalogue().fingerprint()
                + CatalogueFiles.leafcutters().fingerprint());
        print.add(question.species().latinName());
        print.add(question.kept());
        print.add(question.before());
        print.add(String.valueOf(question.cold()));
        print.add(String.valueOf(question.air()));
        print.add(Arrays.toString(hourlyC));
        return print.digits();
    }
}

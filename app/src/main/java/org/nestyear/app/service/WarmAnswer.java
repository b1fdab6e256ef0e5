package org.nestyear.app.service;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.leafcutter.Holding;
import org.nestyear.core.leafcutter.Milestone;
import org.nestyear.core.leafcutter.Stage;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.weather.LogGap;

/**
 * When leafcutter bees come out, and what to heed on the way.
 *
 * @param start the day from which warmth is counted
 * @param startLatest the last day on which warming may begin for the day asked for, or null when a start was told
 * @param dates the band of every milestone
 * @param watch from the first parasitoids to the last day to watch
 * @param stages the stages in order, with the days on which they begin
 * @param hold what is known of the break asked for, or null
 * @param log what the log holds, or null without one
 * @param years how many summers stand behind the dates, or null where no weather was read
 * @param tooHotHours hours warmer than bees come out of, in the log or in a mean summer
 * @param after what follows emergence
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the files, the catalogue or the version
 */
public record WarmAnswer(
        WarmQuestion question,
        LocalDate start,
        @Nullable LocalDate startLatest,
        Map<Milestone, DateBand> dates,
        DateBand watch,
        List<StageDates> stages,
        @Nullable HoldAnswer hold,
        @Nullable LogAnswer log,
        @Nullable Years years,
        double tooHotHours,
        After after,
        List<Parameter> basis,
        String fingerprint) {
    public WarmAnswer {
        dates = Map.copyOf(dates);
        stages = List.copyOf(stages);
        basis = List.copyOf(basis);
    }

    /** The band of a milestone. */
    public DateBand date(Milestone milestone) {
        DateBand band = dates.get(milestone);
        if (band == null) {
            throw new IllegalStateException("no dates for " + milestone);
        }
        return band;
    }

    /** True when every asked date has both its ends. */
    public boolean isComplete() {
        return List.of(Milestone.FIRST_MALE, Milestone.FIRST_FEMALE, Milestone.HALF_FEMALES, Milestone.MOST_OUT)
                .stream()
                .allMatch(milestone -> date(milestone).isComplete());
    }

    /** The value of a number that was read. */
    public double value(String id) {
        return basis.stream()
                .filter(parameter -> parameter.id().equals(id))
                .mapToDouble(Parameter::value)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(id + " was not read"));
    }

    /**
     * One stage.
     *
     * @param begins the days on which the foremost cells reach it
     * @param mayBeHeld true when a hold at this stage was tested and did no harm
     */
    public record StageDates(Stage stage, DateBand begins, boolean mayBeHeld) {}

    /**
     * A break in warming.
     *
     * @param least the least forward stage the foremost cells may be at when it begins
     * @param most the most forward one
     */
    public record HoldAnswer(Stage least, Stage most, Holding.Verdict verdict) {}

    /**
     * A log.
     *
     * @param last time of its last reading
     * @param meanC mean of its hours, °C
     * @param thenC temperature taken for the time after it, or null when nothing can be said of it
     * @param gaps gaps bridged by a straight line
     * @param coolHours hours at which development all but stands still
     * @param least the least forward stage the foremost cells may be at when it ends
     * @param most the most forward one
     */
    public record LogAnswer(
            LocalDateTime last,
            double meanC,
            @Nullable Double thenC,
            List<LogGap> gaps,
            double coolHours,
            Stage least,
            Stage most) {
        public LogAnswer {
            gaps = List.copyOf(gaps);
        }
    }

    /**
     * Summers of a weather record.
     *
     * @param count summers that were run; one when the record holds the summer asked for
     * @param ownDays days of the summer asked for that the record holds
     * @param lastUseful day by which half the females must be out to raise brood
     * @param inTime summers in which they are, by the later bound
     * @param perhapsInTime summers in which they are by the earlier bound
     * @param warmerC how much warmer than the air the sun may keep the house, °C
     * @param warmerHalf when half the females are out in such a house
     * @param warmerInTime summers in which they are then in time, by the later bound
     */
    public record Years(
            int count,
            long ownDays,
            LocalDate lastUseful,
            int inTime,
            int perhapsInTime,
            double warmerC,
            DateBand warmerHalf,
            int warmerInTime) {}

    /**
     * After emergence.
     *
     * @param nesting from the first cells to the day by which most nesting ends
     * @param nestingDays days a female nests on average
     * @param reopening first day on which bees of the same summer may open their cells, or null when unknown
     * @param secondLow share of the early brood that may fly the same summer, low
     * @param secondHigh the same, high
     * @param daysToPrepupa days the last cells need to spin, at 25 and at 20 °C
     */
    public record After(
            DateBand nesting,
            double nestingDays,
            @Nullable LocalDate reopening,
            double secondLow,
            double secondHigh,
            List<Double> daysToPrepupa) {
        public After {
            daysToPrepupa = List.copyOf(daysToPrepupa);
        }
    }
}

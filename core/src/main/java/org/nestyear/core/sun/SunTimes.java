package org.nestyear.core.sun;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult;

/**
 * When the sun rises, stands highest and sets on one calendar day, over a level horizon at sea level: the sun's centre
 * at −0.8333°. Same algorithm and source as {@link SunPosition}. At high latitudes the sun may do neither; the caller
 * cannot forget it, because those days are types of their own.
 */
public sealed interface SunTimes {
    /** When the sun crosses the meridian. */
    Instant transit();

    /** An ordinary day. */
    record RisesAndSets(Instant sunrise, Instant transit, Instant sunset) implements SunTimes {}

    /** The sun stays above the horizon all day. */
    record StaysUp(Instant transit) implements SunTimes {}

    /** The sun stays below the horizon all day. */
    record StaysDown(Instant transit) implements SunTimes {}

    /** The day around an instant where the clock is not known: from one mean solar midnight to the next. */
    static SunTimes around(Observer observer, Instant instant) {
        ZoneOffset meridian = observer.meanSolarTime();
        return of(observer, instant.atOffset(meridian).toLocalDate(), meridian);
    }

    /**
     * The sun's day.
     *
     * @param date the calendar day in {@code zone}
     * @param zone whose midnights bound the day
     */
    static SunTimes of(Observer observer, LocalDate date, ZoneId zone) {
        return of(observer, date, zone, DeltaT.estimate(date));
    }

    /**
     * The sun's day.
     *
     * @param date the calendar day in {@code zone}
     * @param zone whose midnights bound the day
     * @param deltaTSeconds terrestrial time minus universal time, s
     * @throws IllegalArgumentException if {@code deltaTSeconds} is not a finite number
     */
    static SunTimes of(Observer observer, LocalDate date, ZoneId zone, double deltaTSeconds) {
        if (!Double.isFinite(deltaTSeconds)) {
            throw new IllegalArgumentException("delta T of " + deltaTSeconds + " s is not a number of seconds");
        }
        ZonedDateTime day = date.atStartOfDay(zone);
        SunriseResult result = SPA.calculateSunriseTransitSet(
                day, observer.latitudeDeg(), observer.longitudeDeg(), deltaTSeconds, SPA.Horizon.SUNRISE_SUNSET);
        Instant transit = result.transit().toInstant();
        if (result instanceof SunriseResult.RegularDay regular) {
            return new RisesAndSets(
                    regular.sunrise().toInstant(), transit, regular.sunset().toInstant());
        }
        return result instanceof SunriseResult.AllDay ? new StaysUp(transit) : new StaysDown(transit);
    }
}

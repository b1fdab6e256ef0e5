package org.nestyear.core.nesting;

import org.nestyear.core.bloom.FoodCurve;
import org.nestyear.core.flight.FlightDays;

/**
 * What each day of one member gives a female, whoever she is: the part of the nesting season that no release date
 * changes. Arrays are indexed by day of the member's weather.
 */
final class DayRates {
    /** Share of females dying on the day. */
    final double[] death;
    /** Share of females alive at the start of the day, of those alive on day 0. */
    final double[] alive;
    /** Cells a nesting female builds. */
    final double[] cells;
    /** Share of those cells that give an adult. */
    final double[] survival;
    /** Share of newly mature females that settle. */
    final double[] settling;
    /** Worth of a flying female to the target bloom. */
    final double[] bloomVisit;

    DayRates(NestingSettings settings, FlightDays flight, FoodCurve food) {
        int n = food.days();
        death = new double[n];
        alive = new double[n + 1];
        cells = new double[n];
        survival = new double[n];
        settling = new double[n];
        bloomVisit = new double[n];
        alive[0] = 1;
        int flightless = 0;
        for (int d = 0; d < n; d++) {
            boolean flies = flight.canFly(d);
            flightless = flies ? 0 : flightless + 1;
            double extra = settings.deathFlightless() * Math.max(0, flightless - settings.graceDays());
            death[d] = Math.min(settings.deathMost(), settings.death() + extra);
            alive[d + 1] = alive[d] * (1 - death[d]);
            cells[d] = flight.cells(d) * food.food(d);
            survival[d] = settings.cellSurvival() * (1 - settings.parasitism(d - food.targetMiddle()));
            bloomVisit[d] = flies ? food.target(d) : 0;
        }
        for (int d = 0; d < n; d++) {
            settling[d] = settling(settings, food, d);
        }
    }

    private static double settling(NestingSettings settings, FoodCurve food, int day) {
        double sum = 0;
        int looked = 0;
        for (int d = day; d < Math.min(food.days(), day + settings.lookDays()); d++) {
            sum += food.food(d);
            looked++;
        }
        double mean = looked == 0 ? 0 : sum / looked;
        return settings.settling() * (1 - settings.foodWeight() + settings.foodWeight() * mean);
    }

    int days() {
        return death.length;
    }
}

package org.nestyear.core.leafcutter;

import org.nestyear.core.source.ParameterReader;

/**
 * Whether warming may be broken off to wait for weather, by the stage of the cells, the temperature and the days. Yocum et
 * al. 2010 held pupae with coloured eyes, black pupae and ready adults at 6, 12 and 18 °C; Rinehart et al. 2011 held bees in
 * the cold with and without a daily warm hour. Other stages were not held, and are not answered for.
 */
public final class Holding {
    private final double mildLowC;
    private final double mildHighC;
    private final double mildDays;
    private final double coldLowC;
    private final double coldDays;
    private final double pulseShortHours;
    private final double pulseShortDays;
    private final double pulseLongHours;
    private final double pulseLongDays;

    public Holding(ParameterReader parameters) {
        mildLowC = parameters.value("hold_mild_low_c");
        mildHighC = parameters.value("hold_mild_high_c");
        mildDays = parameters.value("hold_mild_days");
        coldLowC = parameters.value("hold_cold_low_c");
        coldDays = parameters.value("hold_cold_days");
        pulseShortHours = parameters.value("hold_pulse_short_hours");
        pulseShortDays = parameters.value("hold_pulse_short_days");
        pulseLongHours = parameters.value("hold_pulse_long_hours");
        pulseLongDays = parameters.value("hold_pulse_long_days");
    }

    /** What is known of such a hold. */
    public enum Verdict {
        /** No loss of survival was found. */
        SAFE,
        /** Bees live, but fewer of them nest afterwards. */
        COSTS,
        /** Longer than the bees were found to bear. */
        TOO_LONG,
        /** Nobody has tried it at this stage or so cold. */
        UNTESTED,
        /** Too warm to hold anything: the bees go on. */
        NOT_A_HOLD,
        /** The bees want out. */
        TOO_LATE
    }

    /** Longest hold known to cost no survival at 12 to 18 °C, days. */
    public double longestDays() {
        return mildDays;
    }

    /** True for the stages that have been held. */
    public boolean wasTested(Stage stage) {
        return stage == Stage.COLOURED_PUPA || stage == Stage.BLACK_PUPA || stage == Stage.READY_ADULT;
    }

    /**
     * What is known of a hold.
     *
     * @param celsius temperature while held, °C
     * @param days length of the hold, d
     * @param pulseHours hours a day at 20 to 25 °C in between, 0 for none
     */
    public Verdict judge(Stage stage, double celsius, double days, double pulseHours) {
        if (stage == Stage.EMERGING) {
            return Verdict.TOO_LATE;
        }
        if (celsius > mildHighC) {
            return Verdict.NOT_A_HOLD;
        }
        if (!wasTested(stage) || celsius < coldLowC) {
            return Verdict.UNTESTED;
        }
        if (celsius >= mildLowC) {
            return days <= mildDays ? Verdict.SAFE : Verdict.TOO_LONG;
        }
        double pulsedDays =
                pulseHours >= pulseLongHours ? pulseLongDays : pulseHours >= pulseShortHours ? pulseShortDays : 0;
        if (days <= pulsedDays) {
            return Verdict.SAFE;
        }
        return days <= coldDays ? Verdict.COSTS : Verdict.TOO_LONG;
    }

    /**
     * The worse of two verdicts, for cells of which it is not known at which of two stages they are.
     */
    public static Verdict worse(Verdict one, Verdict other) {
        return one.compareTo(other) >= 0 ? one : other;
    }
}

package org.nestyear.core.advice;

/** The units in which quantities leave the model; faces convert them to the keeper's own. */
public enum Unit {
    CELSIUS,
    CELSIUS_DIFFERENCE,
    MILLIMETRE,
    METRE,
    LITRE,
    DAY,
    HOUR,
    /** °C·d. */
    DEGREE_DAY,
    /** °C·h. */
    DEGREE_HOUR,
    COUNT,
    /** A share of one, shown as per cent. */
    SHARE,
    /** A plain number. */
    NUMBER
}

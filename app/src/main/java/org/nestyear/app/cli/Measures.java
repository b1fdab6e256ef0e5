package org.nestyear.app.cli;

import org.nestyear.app.service.UnitSystem;
import org.nestyear.app.service.Wording;

/** Volumes and long distances in the keeper's units. */
final class Measures {
    private static final double GALLON_ML = 3785.411784;
    private static final double CUP_ML = 236.5882365;
    private static final double TABLESPOON_ML = 14.78676478125;
    private static final double TEASPOON_ML = 4.92892159375;
    private static final double MILE_KM = 1.609344;
    private static final double FOOT_KM = 0.0003048;
    private static final double METRES_PER_KM = 1000;
    private static final double SHORT_KM = 0.5;
    private static final double LITRE_ML = 1000;

    private Measures() {}

    /** A volume in ml, in words. */
    static String volume(double millilitres, UnitSystem units) {
        if (units == UnitSystem.US) {
            if (millilitres >= GALLON_ML) {
                return trimmed(millilitres / GALLON_ML, 2) + " gal";
            }
            if (millilitres >= CUP_ML / 4) {
                return trimmed(millilitres / CUP_ML, 2) + " cup";
            }
            return millilitres >= TABLESPOON_ML
                    ? trimmed(millilitres / TABLESPOON_ML, 1) + " tbsp"
                    : trimmed(millilitres / TEASPOON_ML, 1) + " tsp";
        }
        return millilitres >= LITRE_ML
                ? trimmed(millilitres / LITRE_ML, 2) + " l"
                : trimmed(millilitres, millilitres < 10 ? 1 : 0) + " ml";
    }

    /** A distance in km, in words; short ones in metres or feet. */
    static String kilometres(double kilometres, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        if (kilometres < SHORT_KM) {
            return us
                    ? Wording.number(kilometres / FOOT_KM, 0) + " ft"
                    : Wording.number(kilometres * METRES_PER_KM, 0) + " m";
        }
        return us ? Wording.number(kilometres / MILE_KM, 2) + " miles" : Wording.number(kilometres, 2) + " km";
    }

    /** A number without needless decimals. */
    static String trimmed(double value, int decimals) {
        String text = Wording.number(value, decimals);
        return text.indexOf('.') < 0 ? text : text.replaceAll("\\.?0+$", "");
    }
}

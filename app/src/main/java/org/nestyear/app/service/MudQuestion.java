package org.nestyear.app.service;

import org.jspecify.annotations.Nullable;
import org.nestyear.core.mud.Settling;
import org.nestyear.core.mud.Soil;

/**
 * What soil this is, how it settles, how much water a tray of it needs.
 *
 * @param fromJar true when the shares were read off layers in a jar
 * @param settling the column of water in the jar
 * @param tray the tray of mud, or null
 */
public record MudQuestion(
        Soil soil,
        boolean fromJar,
        Settling settling,
        @Nullable Tray tray) {
    /**
     * A tray that is kept wet.
     *
     * @param squareMetres its surface
     * @param et0Mm reference evapotranspiration, mm a day
     */
    public record Tray(double squareMetres, double et0Mm) {}
}

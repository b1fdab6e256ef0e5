package org.nestyear.core.advice.sight;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;

/** A front that looks away from the morning sun wakes its bees late. */
final class ShadedFrontRule implements SightRule {
    /** A full circle, by definition; numerical. */
    private static final double CIRCLE = 360;

    /** Half a circle, by definition; numerical. */
    private static final double HALF_CIRCLE = 180;

    @Override
    public Optional<Finding> find(SightCase sight) {
        Double faces = sight.inputs().site().facesDeg();
        ReadLog read = sight.read();
        double low = read.value("front_east_deg");
        double high = read.value("front_south_deg");
        if (!sight.nothingNests() || faces == null) {
            return Optional.empty();
        }
        boolean south = sight.inputs().site().latitudeDeg() < 0;
        double mirrored = south ? (CIRCLE + HALF_CIRCLE - faces) % CIRCLE : faces;
        if (mirrored >= low && mirrored <= high) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "front-without-morning-sun",
                Level.WATCH,
                Phrase.of("The front does not look to the morning sun."),
                Phrase.of("it faces {}°", Quantity.count(faces)),
                south ? Phrase.of("east to north") : Phrase.of("east to south"),
                Phrase.of("Do not turn a house that is in use; next year face it to the morning sun."),
                null,
                read.read()));
    }
}

package org.nestyear.core.advice.winter;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.weather.Humidity;

/** A cold box opened in a warm room draws dew onto the cocoons. */
final class WetOnOpeningRule implements WinterRule {
    @Override
    public Optional<Finding> find(WinterCheck check) {
        StoreAir air = check.air();
        StoreAir.Room room = air == null ? null : air.room();
        if (room == null) {
            return Optional.empty();
        }
        double dew = Humidity.dewPointC(room.celsius(), room.humidityPercent());
        if (check.nowC() >= dew) {
            return Optional.empty();
        }
        ReadLog read = check.read();
        return Optional.of(new Finding(
                "wet-on-opening",
                Level.NOTE,
                Phrase.of("Opened in that room the cocoons get wet."),
                Phrase.of(
                        "they are at {}, and water settles below {}",
                        Quantity.celsius(check.nowC()).withDecimals(1),
                        Quantity.celsius(dew).withDecimals(1)),
                null,
                Phrase.of("Open the box outdoors or in a cool dry room, and close it before it warms."),
                null,
                read.read()));
    }
}

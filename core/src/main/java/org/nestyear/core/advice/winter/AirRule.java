package org.nestyear.core.advice.winter;

import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Unit;
import org.nestyear.core.source.ReadLog;
import org.nestyear.core.weather.Humidity;

/** Air drier or damper than keepers hold it; common practice, no study behind it. */
final class AirRule implements WinterRule {
    private static final double PERCENT = 100;

    @Override
    public Optional<Finding> find(WinterCheck check) {
        StoreAir air = check.air();
        ReadLog read = check.read();
        double dry = read.value("air_dry_percent");
        double damp = read.value("air_damp_percent");
        if (air == null || (air.humidityPercent() >= dry && air.humidityPercent() <= damp)) {
            return Optional.empty();
        }
        boolean isDry = air.humidityPercent() < dry;
        double deficit = Humidity.deficitKPa(check.nowC(), air.humidityPercent());
        return Optional.of(new Finding(
                isDry ? "air-dry" : "air-damp",
                Level.WATCH,
                isDry
                        ? Phrase.of("The air in the store is dry; bees lose water as well as fat.")
                        : Phrase.of("The air in the store is damp; mould likes that."),
                Phrase.of(
                        "{} relative humidity (the air could take up {} kPa more)",
                        Quantity.share(air.humidityPercent() / PERCENT),
                        new Quantity(deficit, Unit.NUMBER, 2)),
                Phrase.of(
                        "{} to {}, as keepers hold it", Quantity.share(dry / PERCENT), Quantity.share(damp / PERCENT)),
                isDry
                        ? Phrase.of(
                                "Lay a damp cloth or pad beside the cocoons, never on them, in a box with air holes.")
                        : Phrase.of("Open the box, wipe it dry, let the cocoons air, and look for mould in a week."),
                null,
                read.read()));
    }
}

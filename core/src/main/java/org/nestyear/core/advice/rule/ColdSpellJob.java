package org.nestyear.core.advice.rule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.JobRule;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.advice.Unit;
import org.nestyear.core.source.ReadLog;

/** Sit tight through a cold spell after release. */
public final class ColdSpellJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        ReadLog read = s.read();
        if (s.outlook().coldSpell() < read.value("cold_spell_share") || s.choosesItself()) {
            return Optional.empty();
        }
        LocalDate from = s.notBeforeToday(s.first().date());
        return Optional.of(new Job(
                "cold-spell",
                Phrase.of("Sit tight if it turns cold"),
                from,
                from.plusDays(Math.round(read.value("second_release_days"))),
                Phrase.of(
                        "three days or more without flight in {} of the seasons tried",
                        Quantity.share(s.outlook().coldSpell())),
                Phrase.of("Bees wait out cold in their cocoons or tunnels. Do not warm, feed, move or plug them."),
                null,
                List.of(Phrase.of(
                        "A flight hour needs {} of air and {} of sun.",
                        Quantity.celsius(read.value("flight_air_c")),
                        Phrase.of("{} W/m²", new Quantity(read.value("flight_radiation"), Unit.NUMBER, 0)))),
                read.read()));
    }
}

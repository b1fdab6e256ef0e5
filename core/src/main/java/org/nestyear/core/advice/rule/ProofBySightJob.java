package org.nestyear.core.advice.rule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.JobRule;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.brood.BroodOutlook;
import org.nestyear.core.source.ReadLog;

/** Look before the cold: mason bees die if chilled before they are adult, so the newest cocoons must prove it. */
public final class ProofBySightJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        BroodOutlook brood = s.brood();
        LocalDate adult = brood == null ? null : brood.adultLate();
        if (brood == null || adult == null || s.outlook().cells() < 1) {
            return Optional.empty();
        }
        ReadLog read = s.read();
        s.brood(read);
        boolean small = s.outlook().cells() < read.value("proof_least_stock");
        Quantity least = Quantity.count(read.value("proof_cocoons_least"));
        Quantity most = Quantity.count(read.value("proof_cocoons_most"));
        LocalDate from = s.notBeforeToday(adult);
        List<Phrase> why = new ArrayList<>();
        why.add(Phrase.of("Last eggs about {}.", brood.lastEgg()));
        LocalDate early = brood.adultEarly();
        if (early != null) {
            why.add(Phrase.of(
                    "Adult between {} and {} in nine cases of ten, over {} summers and two sets of stage times.",
                    early,
                    adult,
                    Quantity.count(brood.summers())));
        }
        return Optional.of(new Job(
                "proof-by-sight",
                Phrase.of("Look whether the youngest bees are adult"),
                from,
                from.plusDays(Math.round(read.value("proof_wait_days"))),
                small
                        ? Phrase.of(
                                "hold {} to {} cocoons of the newest tunnels before a lamp; open none of so few",
                                least,
                                most)
                        : Phrase.of("open {} to {} fully spun cocoons from the newest tunnels", least, most),
                Phrase.of(
                        "All must hold dark bees with wings. White or pale ones mean wait two weeks and look again: cold"
                                + " before they are adult kills them. A pale grub in winter is not always dead; some kinds"
                                + " rest a second year. Write down what you saw."),
                Phrase.of("Wear a dust mask, and mind the blade."),
                why,
                read.read()));
    }
}

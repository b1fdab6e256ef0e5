package org.nestyear.core.advice.rule;

import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.JobRule;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;

/** Add tunnels when there are too few for the females expected to settle. */
public final class AddTunnelsJob implements JobRule {
    @Override
    public Optional<Job> find(Situation s) {
        ReadLog read = s.read();
        Parameter settling = read.row("settling");
        double perFemale = read.value("tunnels_per_female");
        double nesting = s.batch().females() * (1 - read.value("never_out_f")) * settling.high();
        double wanted = Math.ceil(Math.max(read.value("tunnels_least"), nesting * perFemale));
        if (s.tunnels() >= wanted && s.release().shareCapped() == 0) {
            return Optional.empty();
        }
        double more = Math.max(1, wanted - s.tunnels());
        return Optional.of(new Job(
                "add-tunnels",
                Phrase.of("Add free tunnels"),
                s.today(),
                s.notBeforeToday(s.outlook().firstFemales().early()),
                Phrase.of(
                        "{} more, {} wide and {} deep",
                        Quantity.count(more),
                        Quantity.millimetres(read.value("hole_width_mm")).withDecimals(1),
                        Quantity.millimetres(read.value("tunnel_length_mm"))),
                Phrase.of(
                        "Up to {} females may settle, and each should find {} tunnels; you have {}. A female without a"
                                + " free tunnel flies off.",
                        Quantity.count(Math.rint(nesting)),
                        Quantity.count(perFemale),
                        Quantity.count(s.tunnels())),
                null,
                List.of(
                        Phrase.of(
                                "Females that settle: {} to {} of those that come out.",
                                Quantity.share(settling.low()),
                                Quantity.share(settling.high())),
                        Phrase.of(
                                "Tunnels run out in {} of the seasons tried.",
                                Quantity.share(s.release().shareCapped()))),
                read.read()));
    }
}

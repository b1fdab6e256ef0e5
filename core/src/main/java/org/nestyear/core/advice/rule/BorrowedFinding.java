package org.nestyear.core.advice.rule;

import java.util.List;
import java.util.Optional;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.FindingRule;
import org.nestyear.core.advice.Level;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.advice.Situation;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;

/** Says once which numbers were found for another species. */
public final class BorrowedFinding implements FindingRule {
    private static final List<String> CLOCK = List.of(
            "readiness_need_f", "readiness_need_m", "gate_base_f_c", "gate_base_m_c", "gate_need_f", "gate_need_m");

    @Override
    public Optional<Finding> find(Situation s) {
        ReadLog read = s.read();
        List<Parameter> borrowed =
                CLOCK.stream().map(read::row).filter(Parameter::isBorrowed).toList();
        if (borrowed.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Finding(
                "borrowed",
                Level.NOTE,
                Phrase.of(
                        "The clock of coming out is borrowed from {}, and set so that the published wintering cases of the"
                                + " blue orchard bee hold.",
                        borrowed.get(borrowed.size() - 1).borrowedFrom()),
                Phrase.of("{} of {} numbers", Quantity.count(borrowed.size()), Quantity.count(CLOCK.size())),
                null,
                Phrase.of("Write down when yours come out; two or three springs will tell how far they differ."),
                null,
                borrowed));
    }
}

package org.nestyear.core.advice;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.source.Parameter;

/**
 * One thing to do, with its window and its reason.
 *
 * @param id stable short name, used by {@code plan --why}
 * @param title what to do, in a few words
 * @param from first day of the window
 * @param to last day of the window, not before {@code from}
 * @param number how much of what
 * @param reason why, in a sentence
 * @param caution where work can hurt, or null
 * @param why the numbers behind it, a line each
 * @param basis the parameters read for it
 */
public record Job(
        String id,
        Phrase title,
        LocalDate from,
        LocalDate to,
        Phrase number,
        Phrase reason,
        @Nullable Phrase caution,
        List<Phrase> why,
        List<Parameter> basis) {
    public Job {
        if (to.isBefore(from)) {
            throw new IllegalArgumentException("job " + id + " ends on " + to + ", before it begins on " + from);
        }
        why = List.copyOf(why);
        basis = List.copyOf(basis);
    }
}

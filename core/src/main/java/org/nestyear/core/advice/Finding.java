package org.nestyear.core.advice;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.source.Parameter;

/**
 * What a rule found.
 *
 * @param id stable short name of the rule's finding
 * @param what the finding in a sentence
 * @param observed the value found, or null when the finding is about something missing
 * @param limit the value it was held against, or null
 * @param action what to do about it
 * @param caution where work can hurt, or null
 * @param basis the parameters behind it
 */
public record Finding(
        String id,
        Level level,
        Phrase what,
        @Nullable Phrase observed,
        @Nullable Phrase limit,
        Phrase action,
        @Nullable Phrase caution,
        List<Parameter> basis) {
    public Finding {
        basis = List.copyOf(basis);
    }
}

package org.nestyear.core.advice;

import java.time.LocalDate;
import java.util.List;

/**
 * A sentence whose numbers and dates are still values: each {@code {}} of the pattern stands for the next argument.
 * Arguments are {@link Quantity}, {@link LocalDate}, {@link String} or a nested {@code Phrase}.
 */
public record Phrase(String pattern, List<Object> arguments) {
    public Phrase {
        arguments = List.copyOf(arguments);
        long slots = pattern.split("\\{\\}", -1).length - 1L;
        if (slots != arguments.size()) {
            throw new IllegalArgumentException(
                    "\"" + pattern + "\" has " + slots + " slots but " + arguments.size() + " arguments");
        }
        for (Object argument : arguments) {
            if (!(argument instanceof Quantity
                    || argument instanceof LocalDate
                    || argument instanceof String
                    || argument instanceof Phrase)) {
                throw new IllegalArgumentException("\"" + pattern + "\" cannot show a " + argument.getClass());
            }
        }
    }

    public static Phrase of(String pattern, Object... arguments) {
        return new Phrase(pattern, List.of(arguments));
    }
}

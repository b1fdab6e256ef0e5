package org.nestyear.checks.scenario;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.nestyear.core.advice.Finding;
import org.nestyear.core.advice.Job;
import org.nestyear.core.advice.Phrase;
import org.nestyear.core.advice.Quantity;
import org.nestyear.core.plan.Plan;

/** A plan as plain text, for people who read the output of a test. */
final class Printed {
    private Printed() {}

    static String plan(String name, Plan plan) {
        StringBuilder text = new StringBuilder();
        text.append("== ")
                .append(name)
                .append(", asked on ")
                .append(date(plan.today()))
                .append('\n');
        text.append(phrase(plan.headline())).append('\n');
        for (Job job : plan.jobs()) {
            text.append("  ")
                    .append(date(job.from()))
                    .append(" to ")
                    .append(date(job.to()))
                    .append(" [")
                    .append(job.id())
                    .append("] ")
                    .append(phrase(job.title()))
                    .append(": ")
                    .append(phrase(job.number()))
                    .append(". ")
                    .append(phrase(job.reason()));
            Phrase caution = job.caution();
            if (caution != null) {
                text.append(" Caution: ").append(phrase(caution));
            }
            text.append('\n');
            job.why().forEach(why -> text.append("      ").append(phrase(why)).append('\n'));
        }
        for (Finding finding : plan.findings()) {
            text.append("  ")
                    .append(finding.level())
                    .append(" [")
                    .append(finding.id())
                    .append("] ")
                    .append(phrase(finding.what()));
            for (Phrase part : parts(finding)) {
                text.append(" | ").append(phrase(part));
            }
            text.append('\n');
        }
        return text.toString();
    }

    private static List<Phrase> parts(Finding finding) {
        return Stream.of(
                        Optional.ofNullable(finding.observed()),
                        Optional.ofNullable(finding.limit()),
                        Optional.of(finding.action()),
                        Optional.ofNullable(finding.caution()))
                .flatMap(Optional::stream)
                .toList();
    }

    /** A sentence with its values in the simplest words. */
    static String phrase(Phrase phrase) {
        StringBuilder text = new StringBuilder();
        int from = 0;
        for (Object argument : phrase.arguments()) {
            int slot = phrase.pattern().indexOf("{}", from);
            text.append(phrase.pattern(), from, slot);
            if (argument instanceof Phrase nested) {
                text.append(phrase(nested));
            } else if (argument instanceof LocalDate date) {
                text.append(date(date));
            } else if (argument instanceof Quantity quantity) {
                text.append(quantity(quantity));
            } else {
                text.append(argument);
            }
            from = slot + 2;
        }
        return text.append(phrase.pattern().substring(from)).toString();
    }

    private static String date(LocalDate date) {
        return date.getDayOfMonth() + " " + date.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }

    private static String quantity(Quantity quantity) {
        double value = quantity.value();
        String number = String.format(Locale.ROOT, "%." + quantity.decimals() + "f", value);
        return switch (quantity.unit()) {
            case SHARE -> String.format(Locale.ROOT, "%.0f %%", 100 * value);
            case DAY -> number + " d";
            case HOUR -> number + " h";
            case CELSIUS, CELSIUS_DIFFERENCE -> number + " °C";
            case MILLIMETRE -> number + " mm";
            case METRE -> number + " m";
            case LITRE -> number + " l";
            case DEGREE_DAY -> number + " °C·d";
            case DEGREE_HOUR -> number + " °C·h";
            case COUNT, NUMBER -> number;
        };
    }
}

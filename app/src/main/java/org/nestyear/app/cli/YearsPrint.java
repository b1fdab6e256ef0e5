package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.Version;
import org.nestyear.app.service.Wording;
import org.nestyear.app.service.YearsAnswer;
import org.nestyear.app.service.YearsAnswer.Spring;

/** Years ahead in words and as JSON; the schema is {@code schema/years.schema.json}. */
final class YearsPrint {
    static final List<String> METHODS = List.of(
            "4,000 seeded courses: growth log-normal about an uncertain mean (own years and published growth mixed by their"
                    + " number), settling binomial, daughters Poisson",
            "Tunnels: as the command tunnels counts them");

    private YearsPrint() {}

    /** The lines of the answer. */
    static String text(YearsAnswer answer) {
        Spring last = answer.springs().get(answer.springs().size() - 1);
        Spring first = answer.springs().get(0);
        String chance = Wording.share(Grounds.value(answer.basis(), "spare_chance"), 0);
        List<String> lines = new ArrayList<>();
        lines.add("The chance to have " + whole(answer.target())
                + " female cocoons or more to put out in the spring of "
                + last.year() + " is " + Wording.share(answer.reach(), 0) + ", beginning with " + whole(answer.first())
                + " in " + first.year() + ".");
        lines.add(spare(answer, chance));
        for (Spring spring : answer.springs().subList(1, answer.springs().size())) {
            lines.add(spring.year() + ": " + whole(spring.p50()) + " (eight courses in ten between "
                    + whole(spring.p10()) + " and " + whole(spring.p90()) + "), " + whole(spring.tunnels())
                    + " tunnels.");
        }
        lines.add("Tunnels to have on the way: " + whole(answer.tunnels()) + ", for the middle course, as for the "
                + answer.question().species().commonName() + "."
                + (answer.cost() == null ? "" : " " + cost(answer)));
        lines.add(own(answer));
        lines.add(
                "One bad spring makes a stock small, it does not end it: growth in the next year is as likely as before,"
                        + " and wild females may join. Do not buy from far away to fill a gap: young of far-off"
                        + " stock lived through winter at "
                        + Wording.share(Grounds.value(answer.basis(), "far_stock_survival"), 0)
                        + " in one study, of local stock at "
                        + Wording.share(Grounds.value(answer.basis(), "local_stock_survival"), 0) + ".");
        String borrowed =
                BasisWords.borrowed(answer.basis(), answer.question().species().latinName());
        lines.addAll(Grounds.lines(
                "growth from year to year is the least known number of all, which is why the ranges are so wide; flowers"
                        + " set a limit that is not in them"
                        + (answer.question().tunnels() == null ? ", and tunnels are taken to be always enough." : ".")
                        + (borrowed.isEmpty() ? "" : " " + borrowed),
                METHODS,
                answer.basis()));
        return String.join("\n", lines) + "\n";
    }

    private static String spare(YearsAnswer answer, String chance) {
        if (answer.spare() > 0) {
            return "You can give away " + whole(answer.spare())
                    + (answer.spare() == 1 ? " female" : " females") + " now and still have a chance of " + chance
                    + " to keep that target.";
        }
        if (answer.missing() > 0) {
            return "None can be spared: for a chance of " + chance + " some " + whole(answer.missing())
                    + " more females are wanted now.";
        }
        return answer.missing() == 0
                ? "None can be spared: what there is only just gives a chance of " + chance + "."
                : "None can be spared, and no number of females bought now makes that target likely (" + chance
                        + "): tunnels or gifts set the limit, or the year is too far off.";
    }

    private static String cost(YearsAnswer answer) {
        Double cost = answer.cost();
        return "Money, at your prices: " + Wording.number(cost == null ? 0 : cost, 2)
                + " for the females and tunnels that are wanting.";
    }

    private static String own(YearsAnswer answer) {
        int years = answer.own().size();
        double weight = answer.growth().ownWeight();
        String middle = Wording.number(Math.exp(answer.growth().mean()), 2);
        String table = years == 0
                ? "The table shows no growth yet"
                : "Your own years: "
                        + String.join(
                                ", ",
                                answer.own().stream()
                                        .map(y -> y.year() + " × " + Wording.number(y.growth(), 2))
                                        .toList());
        return table
                + (weight == 0
                        ? "; with fewer than three only the published growth is used, × " + middle + " a year."
                        : ". They count for " + Wording.share(weight, 0)
                                + ", the published growth for the rest: together × " + middle + " a year.")
                + " Bought and given females are left out of it, and wild ones that joined count among the mothers.";
    }

    private static String whole(long number) {
        return Wording.number((double) number, 0);
    }

    private static String whole(double number) {
        return Wording.number(number, 0);
    }

    /** The text of the object. */
    static String json(YearsAnswer answer) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            json.text("species", answer.question().species().latinName());
            json.whole("first_females", answer.first());
            json.objects("own_years", answer.own(), (entry, year) -> {
                entry.whole("year", year.year());
                entry.number("growth", year.growth());
                entry.text("from", year.from().toLowerCase(Locale.ROOT));
            });
            json.number("own_weight", answer.growth().ownWeight());
            json.number("growth", Math.exp(answer.growth().mean()));
            json.number("growth_sd_log", Math.sqrt(answer.growth().variance()));
            json.objects("years", answer.springs(), (entry, spring) -> {
                entry.whole("year", spring.year());
                entry.number("p10", spring.p10());
                entry.number("p50", spring.p50());
                entry.number("p90", spring.p90());
                entry.whole("tunnels", spring.tunnels());
            });
            json.whole("target", answer.target());
            json.whole("by", answer.springs().get(answer.springs().size() - 1).year());
            json.number("reach_probability", answer.reach());
            json.whole("tunnels_needed", answer.tunnels());
            json.whole("can_spare", answer.spare());
            json.numberOrNull("females_missing", answer.missing() < 0 ? null : (double) answer.missing());
            json.numberOrNull("cost", answer.cost());
            BasisJson.write(json, answer.basis());
            json.texts("methods", METHODS);
            json.text("fingerprint", answer.fingerprint());
        });
    }
}

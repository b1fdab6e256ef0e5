package org.nestyear.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.nestyear.app.service.BasisWords;
import org.nestyear.app.service.PartOfYear;
import org.nestyear.app.service.PlugAnswer;
import org.nestyear.app.service.Wording;
import org.nestyear.core.guest.CardQuestion;
import org.nestyear.core.guest.Lodger;
import org.nestyear.core.guest.PlugCard;
import org.nestyear.core.guest.Sign;

/** The plug card in words: the whole of it, or who is likely to be in this tunnel. */
final class PlugText {
    private final PlugAnswer answer;
    private final Page page = new Page();

    private PlugText(PlugAnswer answer) {
        this.answer = answer;
    }

    /** The page. */
    static Page of(PlugAnswer answer) {
        PlugText text = new PlugText(answer);
        if (answer.given().isEmpty()) {
            text.wholeCard();
        } else {
            text.answer();
        }
        return text.page;
    }

    private void answer() {
        PlugCard.Match best = answer.likely().get(0);
        page.paragraph(
                0,
                switch (answer.sure()) {
                    case VERY_LIKELY -> "Very likely " + name(best) + ".";
                    case LIKELY -> "Likely " + name(best) + others() + ".";
                    case OPEN -> "These signs do not tell. It may be " + list() + ".";
                    case NONE_FITS ->
                        "Nothing on the card fits all of that. Nearest is " + name(best) + ", but not by the "
                                + words(best.against()) + ": look again, or ask somebody who knows.";
                });
        next();
        if (answer.sure() == PlugAnswer.Sure.OPEN || answer.sure() == PlugAnswer.Sure.NONE_FITS) {
            page.paragraph(
                    0,
                    "Until you know, treat it as a guest: leave it whole, dry and outdoors; never chill, bag or wash"
                            + " it.");
        }
        for (PlugCard.Match match : answer.likely()) {
            page.blank();
            lodger(match.lodger());
        }
        page.blank();
        page.paragraph(
                0,
                "How well this is known: the signs stand in print or are recalled, as told above; how much each"
                        + " weighs is our own judgement, so the shares order the guesses and are not counted chances. "
                        + BasisWords.weakness(answer.basis()));
    }

    private void next() {
        CardQuestion next = answer.next();
        if (next == null || answer.sure() == PlugAnswer.Sure.VERY_LIKELY) {
            return;
        }
        List<String> tells = new ArrayList<>();
        for (PlugCard.Match match : answer.likely()) {
            Set<String> usual = match.lodger().usual().getOrDefault(next, Set.of());
            if (!usual.isEmpty()) {
                tells.add(match.lodger().id() + ": "
                        + String.join(" or ", usual.stream().sorted().toList()));
            }
        }
        page.hanging(0, 4, "Look next: " + next.text() + " (--" + next.word() + "; " + String.join("; ", tells) + ")");
    }

    private void lodger(Lodger lodger) {
        page.paragraph(
                0,
                capital(lodger.name()) + (lodger.latin().isEmpty() ? "" : " (" + lodger.latin() + ")") + ": "
                        + lodger.verdict().word() + ".");
        PartOfYear when = answer.when();
        if (when == null || when.isFlight()) {
            page.hanging(4, 8, "Spring and summer: " + lodger.inFlight());
        }
        if (when == null || !when.isFlight()) {
            page.hanging(4, 8, "Autumn and winter: " + lodger.atRest());
        }
        page.hanging(4, 8, lodger.never());
        if (!lodger.caution().isEmpty()) {
            page.hanging(4, 8, "Caution: " + lodger.caution());
        }
        page.hanging(
                4,
                8,
                "Signs "
                        + (switch (lodger.basis()) {
                            case MEASURED, DERIVED -> "published";
                            default -> BasisWords.words(lodger.basis());
                        })
                        + ": " + lodger.source().citation() + "; " + lodger.locator() + ".");
    }

    private void wholeCard() {
        page.paragraph(0, "PLUG CARD: who is in this tunnel?");
        page.paragraph(
                0,
                "Answer what you can see, in the words below, for instance: plug --plug mud-rough --contents"
                        + " maggots --when winter. One answer is enough to begin with. Guests are left whole, dry and outdoors:"
                        + " never chilled, bagged or washed.");
        for (CardQuestion question : CardQuestion.values()) {
            page.heading(question.word().toUpperCase(Locale.ROOT) + ": " + question.text());
            List<List<String>> rows = new ArrayList<>();
            for (Sign sign : answer.card().signs(question)) {
                rows.add(List.of(sign.word(), sign.meaning()));
            }
            page.table(2, rows);
        }
        page.heading("WHO IT MAY BE");
        for (Lodger.Verdict verdict : Lodger.Verdict.values()) {
            page.blank();
            page.paragraph(0, verdict.word().toUpperCase(Locale.ROOT) + ". " + verdict.text());
            for (Lodger lodger : answer.card().lodgers()) {
                if (lodger.verdict() == verdict) {
                    page.hanging(2, 6, lodger.id() + ": " + lodger.name() + "; " + signs(lodger) + ".");
                }
            }
        }
        page.blank();
        page.paragraph(
                0, "Signs are from print or recalled; ask with one of them to see which, and what to do by season.");
    }

    private static String signs(Lodger lodger) {
        List<String> parts = new ArrayList<>();
        for (CardQuestion question : CardQuestion.values()) {
            Set<String> usual = lodger.usual().getOrDefault(question, Set.of());
            if (!usual.isEmpty() && question != CardQuestion.HOLES) {
                parts.add(question.word() + " "
                        + String.join(" or ", usual.stream().sorted().toList()));
            }
        }
        return String.join(", ", parts);
    }

    private static String name(PlugCard.Match match) {
        return match.lodger().name() + " (" + Wording.share(match.share(), 0) + ")";
    }

    private String others() {
        List<String> others =
                answer.likely().stream().skip(1).map(PlugText::name).toList();
        return others.isEmpty() ? "" : "; else " + String.join(", or ", others);
    }

    private String list() {
        return String.join(", or ", answer.likely().stream().map(PlugText::name).toList());
    }

    private static String words(List<CardQuestion> questions) {
        return String.join(
                " and the ", questions.stream().map(CardQuestion::word).toList());
    }

    private static String capital(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}

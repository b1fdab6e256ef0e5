package org.nestyear.app.service;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.guest.CardQuestion;
import org.nestyear.core.guest.PlugCard;
import org.nestyear.core.guest.Sign;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.ReadLog;
import org.nestyear.data.CatalogueFiles;
import org.nestyear.data.GuestTables;

/**
 * Who is likely to be in a tunnel.
 *
 * @param card all that the card knows
 * @param given answers by question; empty when the whole card is asked for
 * @param when part of the year, or null when not told
 * @param sure how sure the first of the likely ones is
 * @param likely those worth naming, likeliest first; empty for the whole card
 * @param next the open question whose answer would tell most, or null
 * @param basis the numbers read
 * @param fingerprint sixteen characters that change with the question, the catalogue or the version
 */
public record PlugAnswer(
        PlugCard card,
        Map<CardQuestion, String> given,
        @Nullable PartOfYear when,
        Sure sure,
        List<PlugCard.Match> likely,
        @Nullable CardQuestion next,
        List<Parameter> basis,
        String fingerprint) {
    public PlugAnswer {
        EnumMap<CardQuestion, String> copy = new EnumMap<>(CardQuestion.class);
        copy.putAll(given);
        given = copy;
        likely = List.copyOf(likely);
        basis = List.copyOf(basis);
    }

    /** How sure an answer is. */
    public enum Sure {
        VERY_LIKELY("very likely"),
        LIKELY("likely"),
        OPEN("cannot tell"),
        /** Even the best does not fit every answer. */
        NONE_FITS("nothing fits");

        private final String word;

        Sure(String word) {
            this.word = word;
        }

        /** The words in JSON answers. */
        public String word() {
            return word;
        }
    }

    /** Answers that can be given to the questions of the card. */
    public static List<Sign> signs() {
        return GuestTables.signs();
    }

    /** Answers that can be given to one question of the card: what each looks like, by its word. */
    public static Map<String, String> signs(String question) {
        Map<String, String> signs = new LinkedHashMap<>();
        signs().stream()
                .filter(sign -> sign.question().word().equals(question))
                .forEach(sign -> signs.put(sign.word(), sign.meaning()));
        return signs;
    }

    /** Answers the question. */
    public static PlugAnswer of(Map<CardQuestion, String> given, @Nullable PartOfYear when) {
        ReadLog read = new ReadLog(CatalogueFiles.sums("guests"));
        PlugCard card = new PlugCard(GuestTables.lodgers(), GuestTables.signs(), PlugCard.Weights.of(read));
        Fingerprint print = new Fingerprint("");
        print.add(new EnumMap<>(given));
        print.add(String.valueOf(when));
        print.add(card);
        double very = read.value("very_likely");
        double likely = read.value("likely");
        double named = read.value("named_from");
        print.add(read.read());
        if (given.isEmpty()) {
            return new PlugAnswer(card, given, when, Sure.OPEN, List.of(), null, read.read(), print.digits());
        }
        List<PlugCard.Match> matches = card.matches(given);
        PlugCard.Match best = matches.get(0);
        Sure sure = !best.against().isEmpty()
                ? Sure.NONE_FITS
                : best.share() >= very ? Sure.VERY_LIKELY : best.share() >= likely ? Sure.LIKELY : Sure.OPEN;
        return new PlugAnswer(
                card,
                given,
                when,
                sure,
                matches.stream()
                        .filter(match ->
                                match.lodger().id().equals(best.lodger().id()) || match.share() >= named)
                        .toList(),
                card.next(given).orElse(null),
                read.read(),
                print.digits());
    }
}

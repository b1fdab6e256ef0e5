package org.nestyear.core.guest;

import java.util.Map;
import java.util.Set;
import org.nestyear.core.source.Basis;
import org.nestyear.core.source.Source;

/**
 * Somebody, or something, that may be in a tunnel.
 *
 * @param id stable short name
 * @param name as it reads in a sentence
 * @param latin genera and species, or empty
 * @param kind whose it is
 * @param often how often it is met with
 * @param usual usual signs by question
 * @param sometimes signs it has sometimes
 * @param verdict what becomes of it
 * @param inFlight what to do in spring and summer
 * @param atRest what to do in autumn and winter
 * @param never what is never done
 * @param caution where work can hurt, or empty
 * @param basis how its signs are known
 * @param source where they stand
 * @param locator what stands there
 */
public record Lodger(
        String id,
        String name,
        String latin,
        Kind kind,
        Often often,
        Map<CardQuestion, Set<String>> usual,
        Map<CardQuestion, Set<String>> sometimes,
        Verdict verdict,
        String inFlight,
        String atRest,
        String never,
        String caution,
        Basis basis,
        Source source,
        String locator) {
    public Lodger {
        usual = Map.copyOf(usual);
        sometimes = Map.copyOf(sometimes);
    }

    /** Whose it is. */
    public enum Kind {
        OWN("own"),
        BEE("bee"),
        WASP("wasp"),
        ENEMY("enemy"),
        FAILED("failed"),
        EMPTY("empty");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word in the catalogue and in JSON answers. */
        public String word() {
            return word;
        }

        /** True for other bees and for wasps that live there in their own right. */
        public boolean isGuest() {
            return this == BEE || this == WASP;
        }
    }

    /** How often it is met with. */
    public enum Often {
        OFTEN("often"),
        SOMETIMES("sometimes"),
        SELDOM("seldom");

        private final String word;

        Often(String word) {
            this.word = word;
        }

        /** The word in the catalogue. */
        public String word() {
            return word;
        }
    }

    /** What becomes of it. */
    public enum Verdict {
        KEEP("keep", "Keep it with your own brood."),
        RETURN("return", "It is a guest: leave it outdoors, or return it there."),
        REMOVE("remove", "Take it out.");

        private final String word;
        private final String text;

        Verdict(String word, String text) {
            this.word = word;
            this.text = text;
        }

        /** The word in the catalogue and in JSON answers. */
        public String word() {
            return word;
        }

        /** In a sentence. */
        public String text() {
            return text;
        }
    }

    /** How a sign stands to it. */
    Fit fit(CardQuestion question, String sign) {
        if (usual.getOrDefault(question, Set.of()).contains(sign)) {
            return Fit.USUAL;
        }
        return sometimes.getOrDefault(question, Set.of()).contains(sign) ? Fit.SOMETIMES : Fit.NOT;
    }

    /** How a sign stands to a lodger. */
    enum Fit {
        USUAL,
        SOMETIMES,
        NOT
    }
}

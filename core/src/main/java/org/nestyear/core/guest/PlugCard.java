package org.nestyear.core.guest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nestyear.core.source.ParameterReader;

/**
 * Tells from a few signs who is likely to be in a tunnel. Each answer weighs a lodger by how well it fits, each lodger by
 * how often it is met with (Bayes' rule with assumed weights), so that the shares are an ordering with a size, not counts.
 *
 * @param lodgers all that the card knows
 * @param signs all answers that can be given
 * @param weights weights of signs and of lodgers
 */
public record PlugCard(List<Lodger> lodgers, List<Sign> signs, Weights weights) {
    /** A gain in entropy that is none; numerical. */
    private static final double LEAST_GAIN = 1e-9;

    public PlugCard {
        lodgers = List.copyOf(lodgers);
        signs = List.copyOf(signs);
    }

    /**
     * How much signs and frequencies weigh; all above 0.
     *
     * @param usual weight of a usual sign
     * @param sometimes of one that is sometimes so
     * @param not of one that does not fit
     * @param often weight of a lodger met with often
     * @param seldom of one met with seldom; one met with sometimes weighs 1
     */
    public record Weights(double usual, double sometimes, double not, double often, double seldom) {
        /** The weights of the catalogue. */
        public static Weights of(ParameterReader parameters) {
            return new Weights(
                    parameters.value("sign_usual"),
                    parameters.value("sign_sometimes"),
                    parameters.value("sign_not"),
                    parameters.value("common_often"),
                    parameters.value("common_seldom"));
        }
    }

    /**
     * A lodger with its share among all.
     *
     * @param share 0 to 1; all shares together make 1
     * @param against questions whose answer does not fit it
     */
    public record Match(Lodger lodger, double share, List<CardQuestion> against) {
        public Match {
            against = List.copyOf(against);
        }
    }

    /** Answers of a question, in the order of the card. */
    public List<Sign> signs(CardQuestion question) {
        return signs.stream().filter(sign -> sign.question() == question).toList();
    }

    /** All lodgers, likeliest first. */
    public List<Match> matches(Map<CardQuestion, String> answers) {
        double all =
                lodgers.stream().mapToDouble(lodger -> weight(lodger, answers)).sum();
        List<Match> matches = new ArrayList<>();
        for (Lodger lodger : lodgers) {
            List<CardQuestion> against = new ArrayList<>();
            answers.forEach((question, sign) -> {
                if (lodger.fit(question, sign) == Lodger.Fit.NOT) {
                    against.add(question);
                }
            });
            matches.add(new Match(lodger, weight(lodger, answers) / all, against));
        }
        matches.sort(Comparator.comparingDouble(Match::share).reversed());
        return matches;
    }

    /** The open question whose answer would tell most: the one that leaves the least expected entropy. */
    public Optional<CardQuestion> next(Map<CardQuestion, String> answers) {
        CardQuestion best = null;
        double least = entropy(matches(answers));
        for (CardQuestion question : CardQuestion.values()) {
            if (answers.containsKey(question) || signs(question).isEmpty()) {
                continue;
            }
            double expected = expectedEntropy(answers, question);
            if (expected < least - LEAST_GAIN) {
                least = expected;
                best = question;
            }
        }
        return Optional.ofNullable(best);
    }

    private double expectedEntropy(Map<CardQuestion, String> answers, CardQuestion question) {
        List<Match> now = matches(answers);
        double expected = 0;
        for (Sign sign : signs(question)) {
            double chance = 0;
            for (Match match : now) {
                double own = signs(question).stream()
                        .mapToDouble(other -> weight(match.lodger().fit(question, other.word())))
                        .sum();
                chance += match.share() * weight(match.lodger().fit(question, sign.word())) / own;
            }
            Map<CardQuestion, String> then = new EnumMap<>(CardQuestion.class);
            then.putAll(answers);
            then.put(question, sign.word());
            expected += chance * entropy(matches(then));
        }
        return expected;
    }

    private static double entropy(List<Match> matches) {
        double sum = 0;
        for (Match match : matches) {
            sum -= match.share() * Math.log(match.share());
        }
        return sum;
    }

    private double weight(Lodger lodger, Map<CardQuestion, String> answers) {
        double weight = switch (lodger.often()) {
            case OFTEN -> weights.often();
            case SOMETIMES -> 1;
            case SELDOM -> weights.seldom();
        };
        for (Map.Entry<CardQuestion, String> answer : answers.entrySet()) {
            weight *= weight(lodger.fit(answer.getKey(), answer.getValue()));
        }
        return weight;
    }

    private double weight(Lodger.Fit fit) {
        return switch (fit) {
            case USUAL -> weights.usual();
            case SOMETIMES -> weights.sometimes();
            case NOT -> weights.not();
        };
    }
}

package org.nestyear.app.cli;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.nestyear.app.service.IntervalAnswer;
import org.nestyear.app.service.Version;
import org.nestyear.core.count.Limits;
import org.nestyear.core.count.Tally;

/** The intervals of a share as one JSON object; its schema is {@code schema/interval.schema.json}. */
final class IntervalJson {
    private IntervalJson() {}

    /** The text of the object. */
    static String of(IntervalAnswer answer) {
        return JsonText.object(json -> {
            json.text("version", Version.NUMBER);
            tally(json, answer.total());
            json.number("level", answer.question().level());
            json.object("wilson", limits -> limits(limits, answer.wilson()));
            json.object("clopper_pearson", limits -> limits(limits, answer.clopperPearson()));
            json.numberOrNull("none_found_upper", orNull(answer.noneFoundUpper()));
            difference(json, answer);
            clusters(json, answer);
            BasisJson.write(json, List.of());
            json.texts("methods", IntervalText.methods(answer));
            json.text("fingerprint", answer.fingerprint());
        });
    }

    private static void difference(JsonText json, IntervalAnswer answer) {
        Tally other = answer.question().against();
        Limits limits = answer.difference();
        if (other == null || limits == null) {
            json.text("newcombe_difference", null);
            return;
        }
        json.object("newcombe_difference", against -> {
            tally(against, other);
            against.number("difference", answer.total().share() - other.share());
            limits(against, limits);
        });
    }

    private static void clusters(JsonText json, IntervalAnswer answer) {
        IntervalAnswer.Clusters clusters = answer.clusters();
        if (clusters == null) {
            json.text("clusters", null);
            return;
        }
        json.object("clusters", nests -> {
            nests.whole("nests", clusters.nests());
            nests.numberOrNull("design_effect", orNull(clusters.designEffect()));
            nests.number("effective_of", clusters.effective());
            nests.numberOrNull(
                    "none_found_upper_by_nest",
                    answer.total().found() == 0
                            ? clusters.noneFoundUpperByNest(answer.question().level())
                            : null);
        });
    }

    private static void tally(JsonText json, Tally tally) {
        json.whole("found", Math.round(tally.found()));
        json.whole("of", Math.round(tally.of()));
        json.number("share", tally.share());
    }

    static void limits(JsonText json, Limits limits) {
        json.number("low", limits.low());
        json.number("high", limits.high());
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}

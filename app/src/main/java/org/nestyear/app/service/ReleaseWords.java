package org.nestyear.app.service;

import java.util.ArrayList;
import java.util.List;
import org.nestyear.core.release.Agreement;
import org.nestyear.core.release.Alternative;
import org.nestyear.core.release.Edge;
import org.nestyear.core.release.Outlook;
import org.nestyear.core.release.ReleasePlan;
import org.nestyear.core.release.ReleaseWindow;
import org.nestyear.core.release.Sensitivity;
import org.nestyear.core.season.Goal;

/** Puts what stands beside the release date into sentences: other ways to choose it, other aims, what it hangs on. */
public final class ReleaseWords {
    private ReleaseWords() {}

    /** The rule of thumb and the best fixed date, with their costs. */
    public static List<String> alternatives(ReleasePlan release, Wording words) {
        return List.of(
                alternative("The rule of thumb", release.ruleOfThumb(), words),
                alternative("The best fixed calendar date", release.fixedDate(), words));
    }

    private static String alternative(String what, Alternative other, Wording words) {
        String spread = other.earliest().equals(other.latest())
                ? ""
                : " (" + words.range(other.earliest(), other.latest()) + ", by the weather)";
        return what + " says " + words.date(other.date()) + spread + " and costs " + Wording.share(other.cost(), 0)
                + ".";
    }

    /** The window under one aim. */
    public static String window(ReleasePlan release, Goal goal, Wording words) {
        ReleaseWindow window = release.windowsByGoal().getOrDefault(goal, release.window());
        String aim = switch (goal) {
            case BOTH -> "For brood and bloom alike";
            case BROOD -> "For the most daughters";
            case BLOOM -> "For the most bees in the target bloom";
        };
        String edge = window.edge() == Edge.NONE
                ? ""
                : "; under these assumptions " + window.edge().word() + " is better still";
        return aim + ": " + words.range(window.from(), window.to()) + edge + ".";
    }

    /** How far the best date moves when an uncertain thing is otherwise: a sentence for each that moves it. */
    public static List<String> sensitivities(ReleasePlan release) {
        List<String> lines = new ArrayList<>();
        List<String> stays = new ArrayList<>();
        for (Sensitivity sensitivity : release.sensitivities()) {
            if (sensitivity.days() == 0) {
                stays.add(cause(sensitivity.id()));
            } else {
                lines.add("The best date comes " + moves(sensitivity.days()) + " " + cause(sensitivity.id()) + ".");
            }
        }
        if (!stays.isEmpty()) {
            lines.add("The best date stays the same " + joined(stays) + ".");
        }
        return lines;
    }

    /** How many draws of the uncertain numbers agree with the window. */
    public static String agreement(ReleasePlan release, Wording words) {
        Agreement agreement = release.agreement();
        return "All uncertain numbers drawn anew " + agreement.draws() + " times within their ranges: "
                + agreement.inWindow() + " times the best date lies in the window, eight times in ten within "
                + words.range(agreement.early(), agreement.late()) + ".";
    }

    private static String joined(List<String> causes) {
        int last = causes.size() - 1;
        return last == 0 ? causes.get(0) : String.join(", ", causes.subList(0, last)) + ", and " + causes.get(last);
    }

    private static String cause(String id) {
        return switch (id) {
            case "poorer-neighbourhood" -> "with half as much other bloom in reach";
            case "richer-neighbourhood" -> "with half as much again of other bloom in reach";
            case "food-blind-settling" -> "if females settle whatever is in bloom";
            case "food-bound-settling" -> "if females settle by bloom most of all";
            default -> "with " + id.replace('-', ' ');
        };
    }

    private static String moves(int days) {
        int away = Math.abs(days);
        return away + (away == 1 ? " day " : " days ") + (days < 0 ? "earlier" : "later");
    }

    /** What the nests should hold in the end. */
    public static String brood(Outlook outlook) {
        return "Expected: " + Wording.number(outlook.cells(), 0) + " cells in "
                + Wording.number(outlook.tunnelsUsed(), 0) + " tunnels; " + Wording.number(outlook.daughters(), 0)
                + " daughters (" + Wording.number(outlook.daughtersLow(), 0) + " to "
                + Wording.number(outlook.daughtersHigh(), 0) + ") and " + Wording.number(outlook.sons(), 0)
                + " sons next year. Chance that no female settles: " + Wording.share(outlook.noFemaleSettles(), 0)
                + ".";
    }
}

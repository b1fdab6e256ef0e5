package org.nestyear.app.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Understands a line of plain words about a visit; what it does not understand becomes the note, word for word. */
final class VisitWords {
    private static final Pattern PARTS = Pattern.compile("\\s*(?:[;\\n]|,(?!\\d)|\\.(?:\\s|$)|\\band\\b|&)\\s*");
    private static final String HOLES = "(?: (?:tunnels?|holes?|tubes?|reeds?))?";
    private static final String SHUT = "(?: (?:plugged|capped|closed|sealed|plugs?|caps?))?";
    private static final Pattern MORE = Pattern.compile("\\+?(\\d{1,6}) (?:more|new)" + HOLES + SHUT + HOLES);
    private static final Pattern PLUS = Pattern.compile("\\+ ?(\\d{1,6})" + HOLES + SHUT);
    private static final Pattern PLUGGED = Pattern.compile("(\\d{1,6})" + HOLES + " (?:plugged|capped|closed|sealed)");
    private static final Pattern ALL =
            Pattern.compile("(?:now )?(\\d{1,6})" + HOLES + SHUT + " (?:in all|altogether|in total|all told)(?: now)?");
    private static final Pattern TORCH =
            Pattern.compile("(?:by )?torch(?:light)?(?: count)?:? (\\d{1,6})|(\\d{1,6}) (?:bees )?by torch(?:light)?");
    private static final Pattern MUD =
            Pattern.compile("(?:the )?mud:?(?: is)? (wet|damp|dry|none|gone)|(wet|damp|dry|no) mud");
    private static final Map<String, String> NUMBERS = numbers();

    private final VisitTyped before;
    private final List<String> sightingWords;
    private final List<String> understood = new ArrayList<>();
    private final List<String> rest = new ArrayList<>();
    private final List<String> sightings;
    private String more = "";
    private String all = "";
    private String torch = "";
    private String mud = "";

    private VisitWords(VisitTyped before, List<String> sightingWords) {
        this.before = before;
        this.sightingWords = sightingWords;
        this.sightings = new ArrayList<>(before.sightings());
    }

    /**
     * What was understood.
     *
     * @param typed the visit with it
     * @param understood one phrase for each thing
     * @param note what was not understood and stands in the note now; empty where all was
     */
    record Reading(VisitTyped typed, List<String> understood, String note) {}

    /**
     * Reads a line into a visit.
     *
     * @param sightingWords what can be seen
     */
    static Reading read(VisitTyped before, String line, List<String> sightingWords) {
        VisitWords words = new VisitWords(before, sightingWords);
        for (String part : PARTS.split(line.strip(), -1)) {
            if (!part.isBlank()) {
                words.take(part.strip());
            }
        }
        return words.reading();
    }

    private Reading reading() {
        String kept = String.join(", ", rest);
        String note = kept.isEmpty() || before.note().isBlank() ? before.note() + kept : before.note() + "\n" + kept;
        VisitTyped typed = new VisitTyped(
                before.site(),
                before.house(),
                before.species(),
                before.day(),
                more.isEmpty() ? before.more() : more,
                all.isEmpty() ? before.all() : all,
                torch.isEmpty() ? before.torch() : torch,
                mud.isEmpty() ? before.mud() : mud,
                sightings,
                note);
        return new Reading(typed, understood, kept);
    }

    private void take(String part) {
        String plain = plain(part);
        if (!takeCount(plain) && !takeMud(plain) && !takeSighting(plain)) {
            rest.add(part);
        }
    }

    // A second count of the same sort is kept as a note: which of the two is meant is not for a program to say.
    private boolean takeCount(String plain) {
        Matcher inAll = ALL.matcher(plain);
        if (inAll.matches() && all.isEmpty()) {
            all = number(inAll.group(1));
            understood.add(all + " plugged in all");
            return true;
        }
        Matcher since = firstOf(plain, MORE, PLUS, PLUGGED);
        if (since.matches() && more.isEmpty()) {
            more = number(since.group(1));
            understood.add(more + " more plugged since the last visit");
            return true;
        }
        Matcher byTorch = TORCH.matcher(plain);
        if (byTorch.matches() && torch.isEmpty()) {
            torch = number(byTorch.group(1) == null ? byTorch.group(2) : byTorch.group(1));
            understood.add(torch + " tunnels with a bee by torch");
            return true;
        }
        return false;
    }

    private boolean takeMud(String plain) {
        Matcher looked = MUD.matcher(plain);
        if (!looked.matches() || !mud.isEmpty()) {
            return false;
        }
        String word = looked.group(1) == null ? looked.group(2) : looked.group(1);
        mud = word.equals("no") || word.equals("gone") ? "none" : word;
        understood.add("mud: " + mud);
        return true;
    }

    private static Matcher firstOf(String text, Pattern... patterns) {
        Matcher last = patterns[0].matcher(text);
        for (Pattern pattern : patterns) {
            last = pattern.matcher(text);
            if (last.matches()) {
                return last;
            }
        }
        return last;
    }

    // "other" alone tells nothing; it stays a note.
    private boolean takeSighting(String plain) {
        String bare =
                plain.replaceFirst("^(?:saw |seen:? |a |an |the )+", "").replaceFirst(" (?:seen|out|today|here)$", "");
        for (String word : sightingWords) {
            if (!word.equals("other") && (bare.equals(word) || bare.equals(word + "s") || bare.equals(word + "es"))) {
                if (!sightings.contains(word)) {
                    sightings.add(word);
                }
                understood.add("seen: " + word);
                return true;
            }
        }
        return false;
    }

    private static String number(String digits) {
        return Integer.toString(Integer.parseInt(digits));
    }

    // Small letters, single spaces, and numbers up to twelve in figures.
    private static String plain(String part) {
        StringBuilder plain = new StringBuilder();
        for (String word : part.toLowerCase(Locale.ROOT).strip().split("\\s+", -1)) {
            plain.append(plain.isEmpty() ? "" : " ").append(NUMBERS.getOrDefault(word, word));
        }
        return plain.toString();
    }

    private static Map<String, String> numbers() {
        Map<String, String> numbers = new LinkedHashMap<>();
        String[] words = "one two three four five six seven eight nine ten eleven twelve".split(" ", -1);
        for (int i = 0; i < words.length; i++) {
            numbers.put(words[i], Integer.toString(i + 1));
        }
        return numbers;
    }
}

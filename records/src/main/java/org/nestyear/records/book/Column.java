package org.nestyear.records.book;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A column of a record table: what it may hold and how it is called on a page.
 *
 * @param name its name in the table and in files, with the unit where it has one
 * @param label its name on a page, with the unit in words
 * @param kind what its cells hold
 * @param required whether every entry must tell it
 * @param least lowest number, or first year of a date; longest text has no least
 * @param most highest number, last year of a date, or longest text in characters
 * @param words the words it may hold, for {@link ColumnKind#WORD}
 * @param linkTo the table whose ids it holds, for {@link ColumnKind#LINK}, else empty
 */
public record Column(
        String name,
        String label,
        ColumnKind kind,
        boolean required,
        double least,
        double most,
        List<String> words,
        String linkTo) {
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2199;
    private static final int LONGEST_PLACE = 120;
    // The clock times a hand writes: a space for the T, and seconds left out.
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss", Locale.ROOT);
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cntrl}&&[^\\n\\t]]");
    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d{1,15}(\\.\\d{0,15})?|\\.\\d{1,15})");

    public Column {
        words = List.copyOf(words);
    }

    static Column text(String name, String label, int longest) {
        return new Column(name, label, ColumnKind.TEXT, false, 0, longest, List.of(), "");
    }

    static Column word(String name, String label, String... words) {
        return new Column(name, label, ColumnKind.WORD, false, 0, 0, List.of(words), "");
    }

    static Column species(String name, String label) {
        return new Column(name, label, ColumnKind.SPECIES, false, 0, LONGEST_PLACE, List.of(), "");
    }

    static Column date(String name, String label) {
        return new Column(name, label, ColumnKind.DATE, false, FIRST_YEAR, LAST_YEAR, List.of(), "");
    }

    static Column moment(String name, String label) {
        return new Column(name, label, ColumnKind.MOMENT, false, FIRST_YEAR, LAST_YEAR, List.of(), "");
    }

    static Column whole(String name, String label, int least, int most) {
        return new Column(name, label, ColumnKind.WHOLE, false, least, most, List.of(), "");
    }

    static Column number(String name, String label, double least, double most) {
        return new Column(name, label, ColumnKind.NUMBER, false, least, most, List.of(), "");
    }

    static Column yesNo(String name, String label) {
        return new Column(name, label, ColumnKind.YES_NO, false, 0, 0, List.of("yes", "no"), "");
    }

    static Column link(String name, String label, String table) {
        return new Column(name, label, ColumnKind.LINK, false, 0, 0, List.of(), table);
    }

    /** The same column, told by every entry. */
    Column must() {
        return new Column(name, label, kind, true, least, most, words, linkTo);
    }

    /**
     * The one plain spelling of a value, or empty if the column cannot hold it.
     *
     * @param given what was written, not blank
     */
    public Optional<String> plain(String given) {
        String text = given.strip();
        return switch (kind) {
            case TEXT, SPECIES ->
                text.isEmpty() || text.length() > most || CONTROL.matcher(text).find()
                        ? Optional.empty()
                        : Optional.of(text.replace("\r\n", "\n"));
            case WORD -> words.stream().filter(text::equalsIgnoreCase).findFirst();
            case YES_NO -> yesOrNo(text.toLowerCase(Locale.ROOT));
            case DATE -> date(text);
            case MOMENT -> moment(text);
            case WHOLE ->
                number(text)
                        .filter(n -> n.stripTrailingZeros().scale() <= 0)
                        .map(n -> n.setScale(0).toPlainString());
            case NUMBER -> number(text).map(n -> shortest(n.doubleValue()));
            case LINK -> text.length() > LONGEST_PLACE ? Optional.empty() : Optional.of(text);
        };
    }

    /** What the column expects, as the end of a sentence: "a whole number from 0 to 5000". */
    public String expected() {
        return switch (kind) {
            case TEXT -> "words of at most " + (int) most + " letters";
            case SPECIES -> "the Latin name of a bee in the catalogue, such as Osmia lignaria";
            case WORD -> "one of " + String.join(", ", words);
            case YES_NO -> "yes or no";
            case DATE -> "a day such as 2015-04-20";
            case MOMENT -> "a day and time such as 2015-04-20T07:30";
            case WHOLE -> "a whole number from " + shortest(least) + " to " + shortest(most);
            case NUMBER -> "a number from " + shortest(least) + " to " + shortest(most);
            case LINK -> "the name of an entry under " + linkTo;
        };
    }

    /** A number in its shortest spelling that reads back the same, never with an exponent. */
    static String shortest(double value) {
        String text = new BigDecimal(Double.toString(value)).toPlainString();
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    private Optional<BigDecimal> number(String text) {
        if (!DECIMAL.matcher(text).matches()) {
            return Optional.empty();
        }
        BigDecimal value = new BigDecimal(text);
        return value.doubleValue() >= least && value.doubleValue() <= most ? Optional.of(value) : Optional.empty();
    }

    private static Optional<String> yesOrNo(String text) {
        return switch (text) {
            case "yes", "y", "true", "1" -> Optional.of("yes");
            case "no", "n", "false", "0" -> Optional.of("no");
            default -> Optional.empty();
        };
    }

    private Optional<String> date(String text) {
        try {
            LocalDate date = LocalDate.parse(text);
            return date.getYear() < least || date.getYear() > most ? Optional.empty() : Optional.of(date.toString());
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private Optional<String> moment(String text) {
        try {
            LocalDateTime at = LocalDateTime.parse(text.replace(' ', 'T'));
            return at.getYear() < least || at.getYear() > most ? Optional.empty() : Optional.of(MOMENT.format(at));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}

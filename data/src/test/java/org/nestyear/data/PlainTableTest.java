package org.nestyear.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Tables of text cells against RFC 4180, and their guard against formulas. */
class PlainTableTest {
    /** RFC 4180, section 2: CRLF, quotation marks around commas, line breaks and doubled quotation marks. */
    @Test
    void cellsAreQuotedAsTheStandardSays() {
        assertThat(write(List.of("aaa", "b,bb"), List.of("a\"aa", "b\r\nbb")))
                .isEqualTo("aaa,\"b,bb\"\r\n\"a\"\"aa\",\"b\r\nbb\"\r\n");
    }

    @Test
    void noCellIsAFormula() {
        String text = write(List.of("=1+1", "+49 30", "-4.5"), List.of("@SUM(A1)", "-x", "'=1"));
        assertThat(text).isEqualTo("'=1+1,'+49 30,-4.5\r\n'@SUM(A1),'-x,''=1\r\n");
    }

    @Test
    void anyTextComesBackAsItWasGiven() {
        String letters = "=+-@'\"\t,;\n a1\u00E9\uFF1D\uD83D\uDC1D#";
        for (long seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            List<List<String>> rows = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                List<String> row = new ArrayList<>();
                for (int cell = 0; cell < 3; cell++) {
                    StringBuilder text = new StringBuilder();
                    int length = random.nextInt(5);
                    for (int at = 0; at < length; at++) {
                        int from = random.nextInt(letters.codePointCount(0, letters.length()));
                        text.appendCodePoint(letters.codePointAt(letters.offsetByCodePoints(0, from)));
                    }
                    row.add(text.toString());
                }
                rows.add(row);
            }
            StringWriter text = new StringWriter();
            PlainTableWriter writer = new PlainTableWriter(text);
            writer.row(List.of("one", "two", "three"));
            rows.forEach(writer::row);
            writer.finish();
            assertThat(read(text.toString()).rows().stream().map(PlainTable.Row::cells))
                    .as("seed %d", seed)
                    .isEqualTo(rows);
        }
    }

    @Test
    void whatIsWrongIsSaidWithItsPlace() {
        assertThatThrownBy(() -> read("a,b\n1\n")).hasMessageStartingWith("t.csv:2:1: the line has 1 cell; expected 2");
        assertThatThrownBy(() -> read("a,b\n1,2,3\n")).hasMessageContaining("Maybe a cell that holds a comma");
        assertThatThrownBy(() -> read("a,A\n"))
                .hasMessageStartingWith("t.csv:1:3: the column \"a\" stands there twice");
        assertThatThrownBy(() -> read("a,b\n1,\"2\n")).hasMessageStartingWith("t.csv:2:1: a quotation mark");
        assertThatThrownBy(() -> read("")).hasMessageContaining("empty");
    }

    @Test
    void semicolonsTabsAndAByteOrderMarkAreTaken() {
        assertThat(read("\uFEFFa;b\n1;2\n").rows().get(0).cells()).containsExactly("1", "2");
        assertThat(read("a\tb\r\n#1\t2\r\n").rows().get(0).cells()).containsExactly("#1", "2");
    }

    private static String write(List<String> first, List<String> second) {
        StringWriter text = new StringWriter();
        PlainTableWriter writer = new PlainTableWriter(text);
        writer.row(first);
        writer.row(second);
        writer.finish();
        return text.toString();
    }

    private static PlainTable read(String text) {
        return PlainTable.read(TextSource.ofTexts("t.csv", Map.of("t.csv", text)));
    }
}

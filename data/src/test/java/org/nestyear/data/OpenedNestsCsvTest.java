package org.nestyear.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.nestyear.core.losses.Cause;
import org.nestyear.core.losses.OpenedNest;

class OpenedNestsCsvTest {
    private static OpenedNests read(String text) {
        return OpenedNestsCsv.read(TextSource.ofTexts("tally.csv", Map.of("tally.csv", text)));
    }

    @Test
    void everyColumnIsUnderstood() {
        OpenedNests opened = read("""
                # what opening found
                House;Tube;Material;Season;Cells;Alive;Cacoxenus;Birds;note
                pear tree;a1;reed;2024;8;5;2;1;
                pear tree;a2;reed;;4;4;;-;wet
                """);
        assertThat(opened.looked()).containsExactly(Cause.FLIES, Cause.ROBBED);
        OpenedNest first = opened.nests().get(0);
        assertThat(first.house()).isEqualTo("pear tree");
        assertThat(first.nest()).isEqualTo("a1");
        assertThat(first.kind()).isEqualTo("reed");
        assertThat(first.year()).isEqualTo(2024);
        assertThat(first.lostTo(Cause.FLIES)).isEqualTo(2);
        assertThat(first.alive()).isEqualTo(5);
        assertThat(opened.nests().get(1).year()).isNull();
        assertThat(opened.nests().get(1).alive()).isEqualTo(4);
    }

    @Test
    void everyCauseHasItsColumn() {
        for (Cause cause : Cause.values()) {
            OpenedNests opened = read("cells," + cause.word() + "\n7,2\n");
            assertThat(opened.looked()).containsExactly(cause);
            assertThat(opened.nests().get(0).lostTo(cause)).isEqualTo(2);
        }
    }

    @Test
    void whatIsNotToldFollowsFromTheRest() {
        assertThat(read("cells,mites\n7,2\n").nests().get(0).alive()).isEqualTo(5);
        assertThat(read("alive,mites\n5,2\n").nests().get(0).cells()).isEqualTo(7);
        OpenedNests counted = read("cells,alive\n9,6\n");
        assertThat(counted.looked()).containsExactly(Cause.UNKNOWN);
        assertThat(counted.nests().get(0).lostTo(Cause.UNKNOWN)).isEqualTo(3);
    }

    /** The same nest name in two houses or two years is two nests. */
    @Test
    void namesAreThoseOfAHouseAndYear() {
        assertThat(read("house,nest,year,cells,mites\na,1,2023,5,0\nb,1,2023,5,0\na,1,2024,5,0\n")
                        .nests())
                .hasSize(3);
    }

    @Test
    void faultsAreNamedByPlace() {
        refused("cells,mites\n7,x\n", FaultCode.TALLY_NUMBER, 2, 3, "\"x\" stands in the tally");
        refused("cells,mites\n7,1.5\n", FaultCode.TALLY_NUMBER, 2, 3, "\"1.5\" stands in the tally");
        refused("year,cells,mites\n24,7,1\n", FaultCode.TALLY_NUMBER, 2, 1, "a year such as 2015");
        refused("nest,cells,mites\na,,1\n", FaultCode.TALLY_NUMBER, 2, 3, "neither the cells nor the living ones");
        refused("cells,mites,wasps\n7,4,4\n", FaultCode.TALLY_SUM, 2, 1, "the causes come to 8 of 7 cells");
        refused("cells,alive,mites\n7,4,1\n", FaultCode.TALLY_SUM, 2, 1, "come to 5 of 7 cells");
        refused("cells,alive\n7,9\n", FaultCode.TALLY_SUM, 2, 1, "come to 9 of 7 cells");
        refused("cells,mites\n0,0\n", FaultCode.TALLY_SUM, 2, 1, "this nest has no cell");
        refused(
                "nest,cells,mites\na,5,0\nb,5,0\na,4,1\n",
                FaultCode.TALLY_TWICE,
                4,
                1,
                "the nest \"a\" stands there twice");
        refused("nest,cells,chlakbrood\na,5,0\n", FaultCode.TALLY_COLUMN, 1, 12, "Maybe \"chalkbrood\" was meant.");
        refused("nest,cells,rust\na,5,0\n", FaultCode.TALLY_COLUMN, 1, 12, "the column \"rust\" is not one of a tally");
        refused("cells,mites,mite\n5,0,0\n", FaultCode.TALLY_COLUMN, 1, 13, "tell the same");
        refused("cells,mites,mites\n5,0,0\n", FaultCode.TALLY_COLUMN, 1, 13, "tell the same");
        refused("nest,mites\na,5\n", FaultCode.TALLY_COLUMN, 1, 1, "a column cells");
        refused("nest,cells\na,5\n", FaultCode.TALLY_COLUMN, 1, 1, "a column for a cause");
        refused("cells,mites\n", FaultCode.FILE_EMPTY, 1, 1, "the table holds no nest");
        refused("cells,mites\n5,\"0\n", FaultCode.TALLY_SYNTAX, 2, 1, "a quotation mark is opened");
    }

    private static void refused(String text, FaultCode code, int line, int column, String words) {
        assertThatThrownBy(() -> read(text)).isInstanceOfSatisfying(DataFault.class, fault -> {
            assertThat(fault.code()).as(text).isEqualTo(code);
            assertThat(fault.at()).as(text).isEqualTo(new Position("tally.csv", line, column));
            assertThat(fault.getMessage()).contains(words).contains("; expected ");
        });
    }
}

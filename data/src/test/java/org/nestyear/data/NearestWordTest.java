package org.nestyear.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestWordTest {
    @Test
    void distanceIsTheTextbookOne() {
        // Levenshtein distances as given in any textbook: kitten to sitting 3, flaw to lawn 2.
        assertThat(NearestWord.distance("kitten", "sitting")).isEqualTo(3);
        assertThat(NearestWord.distance("flaw", "lawn")).isEqualTo(2);
        assertThat(NearestWord.distance("", "abc")).isEqualTo(3);
        assertThat(NearestWord.distance("abc", "abc")).isZero();
    }

    @Test
    void aMistypedWordFindsItsNeighbour() {
        assertThat(NearestWord.find("lattitude", List.of("longitude", "latitude")))
                .isEqualTo("latitude");
        assertThat(NearestWord.find("FRIDGE", List.of("shed", "fridge"))).isEqualTo("fridge");
    }

    @Test
    void anotherWordFindsNone() {
        assertThat(NearestWord.find("banana", List.of("longitude", "latitude"))).isNull();
        assertThat(NearestWord.find("x", List.of("to", "of"))).isNull();
    }
}

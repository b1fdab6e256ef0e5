package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nestyear.app.service.Refusal;
import org.nestyear.app.service.SmallSums;

/** Another face asks the commands and hears what the terminal would show. */
class CommandSumsTest {
    private static final CommandSums SUMS =
            new CommandSums(Clock.fixed(Instant.parse("2015-03-10T12:00:00Z"), ZoneOffset.UTC));

    @ParameterizedTest
    @ValueSource(
            strings = {
                "range --span-mm=2.9",
                "range --span-mm=2.9 --units=us",
                "interval --found=9 --of=120 --against=3/100",
                "rinse --item=cocoon --label-percent=5.25 --bleach=0.25cup --water=1gal",
                "sun --lat=40.78 --lon=-73.97 --at=2015-04-20T10:00:00-04:00",
                "degree-days --min=4C --max=17C --base=5"
            })
    void theSameWordsAndTheSameObject(String command) {
        List<String> words = List.of(command.split(" "));
        SmallSums.Told told = SUMS.ask(words);
        List<String> asJson = new ArrayList<>(words);
        asJson.add("--json");
        assertThat(told.json()).isEqualTo(Run.of(asJson.toArray(String[]::new)).out());
        assertThat(Page.set(String.join("\n", told.lines())))
                .isEqualTo(Run.of(words.toArray(String[]::new)).out());
        assertThat(told.whole()).isTrue();
    }

    @Test
    void aRefusalIsTheCommandsOwn() {
        assertThatThrownBy(() -> SUMS.ask(List.of("range", "--span-mm=40")))
                .isInstanceOfSatisfying(Refusal.class, refusal -> {
                    assertThat(refusal.code()).isEqualTo("NY-USAGE");
                    assertThat(refusal.sentence())
                            .isEqualTo("--span-mm is \"40\"; expected from 0.3 to 10 mm between the wing bases.");
                    assertThat(refusal.advice()).startsWith("Maybe ");
                });
        assertThatThrownBy(() -> SUMS.ask(List.of("range")))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("nestyear range lacks something");
        assertThatThrownBy(() -> SUMS.ask(List.of("range", "--span-mm=2", "@/etc/passwd")))
                .isInstanceOf(Refusal.class);
    }

    @Test
    void aCommandSaysWhatItMayBeTold() {
        assertThat(SUMS.wordsOf("sample"))
                .contains(
                        new SmallSums.Word("--population", "How many there are in all (default: very many).", false),
                        new SmallSums.Word("--margin", "Know the share to within so much, such as 5%.", false));
        assertThat(SUMS.wordsOf("trend")).extracting(SmallSums.Word::name).contains("FILE", "--within");
    }
}

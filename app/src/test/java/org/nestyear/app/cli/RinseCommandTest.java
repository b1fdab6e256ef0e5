package org.nestyear.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nestyear.app.JsonSchemas;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class RinseCommandTest {
    /** The trade's quarter cup a gallon (common practice, no source): 808 ppm at 5.25 %, by hand. */
    @Test
    void theQuarterCupComesOut() {
        JsonNode answer = json("rinse --item cocoon --label-percent 5.25 --bleach 0.25cup --water 1gal --json");
        assertThat(answer.get("ppm").asDouble()).isEqualTo(808, within(0.5));
        assertThat(answer.get("bleach_ml").asDouble()).isEqualTo(59.147, within(0.001));
        assertThat(answer.get("allowed").asBoolean()).isTrue();
        assertThat(answer.get("steps")).hasSize(4);
        assertThat(answer.get("published")).hasSizeGreaterThanOrEqualTo(10);
        double weakest = answer.at("/published/0/ppm").asDouble();
        double strongest = answer.get("published")
                .get(answer.get("published").size() - 1)
                .get("ppm")
                .asDouble();
        assertThat(strongest / weakest).as("factor of several hundred").isGreaterThan(100);
    }

    /** The same quantity in other units is the same mixture. */
    @ParameterizedTest
    @ValueSource(strings = {"4tbsp", "12tsp", "1/4cup", "0.25cups", "59.147ml", "2floz", "0.059147L"})
    void unitsAgree(String bleach) {
        JsonNode answer = json("rinse --item gear --label-percent 5.25 --bleach " + bleach + " --water 4qt --json");
        assertThat(answer.get("ppm").asDouble()).isEqualTo(807.7, within(0.1));
    }

    /** WHO 2014, annex G: 500 ppm is 1 part of 5 % in 99 of water. */
    @Test
    void aWantedStrengthIsMixed() {
        JsonNode answer = json("rinse --item gear --label-percent 5 --target-ppm 500 --water 99ml --json");
        assertThat(answer.get("bleach_ml").asDouble()).isEqualTo(1, within(1e-9));
        assertThat(answer.get("ppm").asDouble()).isEqualTo(500, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(strings = {"leaf-cell", "guest"})
    void neverForLeafCellsAndGuests(String item) {
        JsonNode told = json("rinse --item " + item + " --label-percent 5 --bleach 1tsp --water 4l --json");
        assertThat(told.get("allowed").asBoolean()).isFalse();
        assertThat(told.get("steps")).isEmpty();
        assertThat(told.get("cautions")).isNotEmpty();
        JsonNode wanted = json("rinse --item " + item + " --label-percent 5 --target-ppm 500 --water 4l --json");
        assertThat(wanted.get("bleach_ml").isNull()).as("no recipe").isTrue();
        assertThat(text("rinse --item " + item + " --label-percent 5 --target-ppm 500 --water 4l"))
                .startsWith("No: ")
                .doesNotContain("gives 500 ppm");
    }

    /** Half and half is for empty gear, never for cocoons. */
    @Test
    void cocoonsNeverGetWhatIsForGear() {
        assertThat(json("rinse --item cocoon --label-percent 5.25 --bleach 1l --water 1l --json")
                        .get("allowed")
                        .asBoolean())
                .isFalse();
        assertThat(json("rinse --item gear --label-percent 5.25 --bleach 1l --water 1l --json")
                        .get("allowed")
                        .asBoolean())
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"gear", "cocoon", "leaf-cell", "guest"})
    void cautionsStandUnderEveryAnswerAndNoKillIsClaimed(String item) {
        String text = text("rinse --item " + item + " --label-percent 6 --bleach 60ml --water 4l --bottle-months 30");
        assertThat(text)
                .contains("Never mix bleach with vinegar or any other acid, nor with ammonia")
                .contains("windows open", "gloves", "eye protection", "Follow the label", "Local rules")
                .contains("This bottle is 30 months old")
                .contains("no share of spores killed is claimed")
                .contains("no published source")
                .doesNotContainPattern("kills \\d")
                .doesNotContainPattern("\\d ?% of (the )?spores");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            rinse --item cells --label-percent 5 --bleach 60ml --water 4l | --item is "cells"; expected one of gear, cocoon, leaf-cell, guest.
            rinse --item gear --label-percent 5 --bleach 60 --water 4l | --bleach is "60"; expected a volume with its unit, such as 60ml, 2l, 0.25cup, 1tbsp, 2tsp or 1gal.
            rinse --item gear --label-percent 5 --bleach 0,25cup --water 4l | --bleach is "0,25cup"; expected a volume with its unit
            rinse --item gear --label-percent 5 --bleach 0ml --water 4l | --bleach is "0ml"; expected more than nothing.
            rinse --item gear --label-percent 5 --bleach 1/0cup --water 4l | --bleach is "1/0cup"; expected a volume with its unit
            rinse --item gear --label-percent 5 --bleach 60g --water 4l | --bleach is "60g"; expected a volume with its unit
            rinse --item gear --label-percent 50 --bleach 60ml --water 4l | --label-percent is 50; expected a number from 1 to 15 per cent.
            rinse --item gear --label-percent 5 --water 4l | it is not clear what is mixed; expected either --bleach QUANTITY or --target-ppm PPM.
            rinse --item gear --label-percent 5 --bleach 60ml --target-ppm 500 --water 4l | it is not clear what is mixed
            rinse --item gear --label-percent 5 --target-ppm 60000 --water 4l | --target-ppm is 60,000, but the bottle itself holds 50,000 ppm; expected less than that.
            rinse --item gear --label-percent 5 --bleach 60ml | nestyear rinse lacks something; expected --water QUANTITY
            """)
    void wrongQuantitiesAreNamed(String arguments, String sentence) {
        Run run = Run.of(arguments.split(" ", -1));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("nestyear: " + sentence).contains(" [NY-USAGE]");
    }

    private static String text(String arguments) {
        Run run = Run.of(arguments.split(" ", -1));
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
        return run.out().replaceAll("\\s+", " ");
    }

    private static JsonNode json(String arguments) {
        Run run = Run.of(arguments.split(" ", -1));
        assertThat(run.exit()).as(run.err()).isZero();
        JsonSchemas.assertValid("rinse.schema.json", run.out());
        return JsonMapper.shared().readTree(run.out());
    }
}

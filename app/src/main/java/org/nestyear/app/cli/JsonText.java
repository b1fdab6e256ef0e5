package org.nestyear.app.cli;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonWriteFeature;

/**
 * Writes one JSON object, value by value; no reflection, so that a command answers at once. Numbers carry nine
 * significant digits, more than any input has; a number that is not finite is a defect and is refused.
 */
final class JsonText {
    private static final MathContext DIGITS = new MathContext(9);

    private final JsonGenerator json;

    private JsonText(JsonGenerator json) {
        this.json = json;
    }

    /** The text of an object with these members, and a line end. */
    static String object(Consumer<JsonText> members) {
        StringWriter text = new StringWriter();
        JsonFactory factory = JsonFactory.builder()
                .disable(JsonWriteFeature.ESCAPE_FORWARD_SLASHES)
                .build();
        try (JsonGenerator json = factory.createGenerator(ObjectWriteContext.empty(), text)) {
            json.writeStartObject();
            members.accept(new JsonText(json));
            json.writeEndObject();
        }
        return text + "\n";
    }

    /** A text, or null. */
    void text(String name, @Nullable String value) {
        if (value == null) {
            json.writeNullProperty(name);
        } else {
            json.writeStringProperty(name, value);
        }
    }

    /** A day as ISO 8601, or null. */
    void date(String name, @Nullable LocalDate value) {
        text(name, value == null ? null : value.toString());
    }

    /** A finite number. */
    void number(String name, double value) {
        json.writeName(name);
        json.writeNumber(rounded(name, value));
    }

    /** A finite number, or null. */
    void numberOrNull(String name, @Nullable Double value) {
        if (value == null) {
            json.writeNullProperty(name);
        } else {
            number(name, value);
        }
    }

    void whole(String name, long value) {
        json.writeNumberProperty(name, value);
    }

    void flag(String name, boolean value) {
        json.writeBooleanProperty(name, value);
    }

    /** An object. */
    void object(String name, Consumer<JsonText> members) {
        json.writeObjectPropertyStart(name);
        members.accept(this);
        json.writeEndObject();
    }

    /** A list of objects. */
    <T> void objects(String name, List<T> values, BiConsumer<JsonText, T> members) {
        json.writeArrayPropertyStart(name);
        for (T value : values) {
            json.writeStartObject();
            members.accept(this, value);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** A list of texts. */
    void texts(String name, List<String> values) {
        json.writeArrayPropertyStart(name);
        values.forEach(json::writeString);
        json.writeEndArray();
    }

    /** A list of whole numbers. */
    void wholes(String name, List<Integer> values) {
        json.writeArrayPropertyStart(name);
        values.forEach(json::writeNumber);
        json.writeEndArray();
    }

    private static BigDecimal rounded(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalStateException("\"" + name + "\" is " + value + ", which no answer may hold");
        }
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}

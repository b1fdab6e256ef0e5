package org.nestyear.app.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.nestyear.core.source.Basis;
import org.nestyear.core.source.Parameter;
import org.nestyear.core.source.Source;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/** The values of a command's JSON by where they stand: {@code wilson/low}, {@code basis/0/id}. */
final class JsonFacts {
    private final Map<String, String> values = new LinkedHashMap<>();

    private JsonFacts() {}

    /** Reads one object. */
    static JsonFacts of(String json) {
        JsonFacts facts = new JsonFacts();
        try (JsonParser parser = new JsonFactory().createParser(ObjectReadContext.empty(), json)) {
            parser.nextToken();
            facts.read(parser, "");
        }
        return facts;
    }

    private void read(JsonParser parser, String path) {
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String name = parser.currentName();
                parser.nextToken();
                read(parser, path.isEmpty() ? name : path + "/" + name);
            }
        } else if (token == JsonToken.START_ARRAY) {
            for (int i = 0; parser.nextToken() != JsonToken.END_ARRAY; i++) {
                read(parser, path + "/" + i);
            }
        } else if (token != JsonToken.VALUE_NULL) {
            values.put(path, parser.getString());
        }
    }

    /** The value as the JSON writes it, or null where there is none. */
    @Nullable
    String find(String path) {
        return values.get(path);
    }

    /** The numbers the answer rests on. */
    List<Parameter> basis() {
        List<Parameter> rows = new ArrayList<>();
        for (int i = 0; values.containsKey("basis/" + i + "/id"); i++) {
            String row = "basis/" + i + "/";
            rows.add(new Parameter(
                    text(row + "id"),
                    Double.parseDouble(text(row + "value")),
                    text(row + "unit"),
                    Double.parseDouble(text(row + "low")),
                    Double.parseDouble(text(row + "high")),
                    Basis.ofWord(text(row + "kind")),
                    new Source(text(row + "citation"), text(row + "citation"), text(row + "doi")),
                    text(row + "locator"),
                    text(row + "borrowed_from"),
                    text(row + "note")));
        }
        return rows;
    }

    private String text(String path) {
        return values.getOrDefault(path, "");
    }
}

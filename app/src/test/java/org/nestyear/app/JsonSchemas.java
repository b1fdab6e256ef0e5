package org.nestyear.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Checks JSON texts against the schemas that ship with the program. */
public final class JsonSchemas {
    private JsonSchemas() {}

    /** What the schema with this file name has against the text. */
    public static List<Error> errors(String schemaFile, String json) {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(text("/schema/" + schemaFile), InputFormat.JSON);
        return schema.validate(
                json,
                InputFormat.JSON,
                context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)));
    }

    /** Fails when the text does not satisfy the schema. */
    public static void assertValid(String schemaFile, String json) {
        assertThat(errors(schemaFile, json))
                .as("faults by %s in %s", schemaFile, json)
                .isEmpty();
    }

    private static String text(String resource) {
        try (InputStream stream = JsonSchemas.class.getResourceAsStream(resource)) {
            assertThat(stream).as("resource %s", resource).isNotNull();
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}

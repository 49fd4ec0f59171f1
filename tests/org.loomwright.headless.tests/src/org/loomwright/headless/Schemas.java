// SPDX-License-Identifier: EPL-2.0
package org.loomwright.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.harrel.jsonschema.Validator;
import dev.harrel.jsonschema.ValidatorFactory;
import dev.harrel.jsonschema.providers.JacksonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Validates output against the schemas that the program documents its JSON with. */
public final class Schemas {
    private static final Path FOLDER = Path.of("..", "..", "bundles", "org.loomwright.headless", "schema");

    private Schemas() {
    }

    /** Parses a document, which must be valid. */
    public static JsonNode valid(String schema, String json) {
        assertEquals(List.of(), errors(schema, json));
        return parsed(json);
    }

    /** What is wrong with a document; empty for a valid one. */
    public static List<String> errors(String schema, String json) {
        try {
            Validator.Result result = new ValidatorFactory().withJsonNodeFactory(new JacksonNode.Factory())
                    .validate(Files.readString(FOLDER.resolve(schema + ".schema.json")), json);
            return result.getErrors().stream().map(error -> error.getInstanceLocation() + ": " + error.getError()).toList();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** Parses a document. */
    public static JsonNode parsed(String json) {
        try {
            return new ObjectMapper().readTree(json);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}

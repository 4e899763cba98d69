package studio.stancebook.hostile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The API as it describes itself. */
final class ApiDescription {

    /**
     * A call.
     *
     * @param body the schema of its JSON; missing if it takes none
     */
    record Call(String method, String path, List<JsonNode> parameters, JsonNode body, boolean takesFile) {}

    private static final JsonMapper JSON = new JsonMapper();

    private final JsonNode root;

    ApiDescription(String document) {
        this.root = JSON.readTree(document);
    }

    List<Call> calls() {
        List<Call> calls = new ArrayList<>();
        root.path("paths")
                .properties()
                .forEach(path -> path.getValue()
                        .properties()
                        .forEach(verb -> calls.add(call(verb.getKey(), path.getKey(), verb.getValue()))));
        return List.copyOf(calls);
    }

    private static Call call(String verb, String path, JsonNode operation) {
        List<JsonNode> parameters = new ArrayList<>();
        operation.path("parameters").forEach(parameters::add);
        JsonNode content = operation.path("requestBody").path("content");
        return new Call(
                verb.toUpperCase(Locale.ROOT),
                path,
                List.copyOf(parameters),
                content.path("application/json").path("schema"),
                content.has("multipart/form-data"));
    }

    /** A schema in place of a reference to it. */
    JsonNode resolved(JsonNode schema) {
        JsonNode reference = schema.path("$ref");
        return reference.isString() ? root.at(reference.asString().substring(1)) : schema;
    }
}

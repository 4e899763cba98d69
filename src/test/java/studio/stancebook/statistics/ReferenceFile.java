package studio.stancebook.statistics;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A file of reference values; where each comes from stands in {@code reference/SOURCES.md}. */
final class ReferenceFile {

    private ReferenceFile() {}

    static JsonNode json(String name) {
        return JsonMapper.builder().build().readTree(text(name));
    }

    static List<String> lines(String name) {
        return text(name).lines().toList();
    }

    static double[] doubles(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false)
                .mapToDouble(JsonNode::asDouble)
                .toArray();
    }

    private static String text(String name) {
        try (InputStream in = ReferenceFile.class.getResourceAsStream("/reference/" + name)) {
            return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(name, e);
        }
    }
}

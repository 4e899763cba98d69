package studio.stancebook.catalogue.internal;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import studio.stancebook.access.Author;
import studio.stancebook.classes.layout.ValuesApart;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/**
 * Values that are set aside as the text in which they are kept: {@code {"wheelbase": ["reason", "by", "at", "7"]}}, the last the
 * id of who set it aside, where it is known.
 */
final class SetAsideText {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final TypeReference<Map<String, String[]>> TREE = new TypeReference<>() {};

    private SetAsideText() {}

    static String write(Map<String, ValueAside> apart) {
        Map<String, String[]> tree = new LinkedHashMap<>();
        apart.forEach((key, value) -> tree.put(key, written(value)));
        return tree.isEmpty() ? ValuesApart.NONE : JSON.writeValueAsString(tree);
    }

    static Map<String, ValueAside> read(String text) {
        Map<String, ValueAside> apart = new LinkedHashMap<>();
        if (!text.equals(ValuesApart.NONE)) {
            JSON.readValue(text, TREE).forEach((key, value) -> apart.put(key, read(value)));
        }
        return apart;
    }

    private static String[] written(ValueAside value) {
        String name = value.by().name();
        String at = value.at().toString();
        Long id = value.by().personId();
        return id == null
                ? new String[] {value.reason(), name, at}
                : new String[] {value.reason(), name, at, id.toString()};
    }

    private static ValueAside read(String[] value) {
        Long id = value.length > 3 ? Long.valueOf(value[3]) : null;
        return new ValueAside(value[0], new Author(id, value[1]), Instant.parse(value[2]));
    }
}

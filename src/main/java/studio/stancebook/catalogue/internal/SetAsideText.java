package studio.stancebook.catalogue.internal;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import studio.stancebook.catalogue.SetAside;
import studio.stancebook.classes.layout.ValuesApart;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Values that are set aside as the text in which they are kept: {@code {"wheelbase": ["reason", "by", "at"]}}. */
final class SetAsideText {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final TypeReference<Map<String, String[]>> TREE = new TypeReference<>() {};

    private SetAsideText() {}

    static String write(Map<String, SetAside> apart) {
        Map<String, String[]> tree = new LinkedHashMap<>();
        apart.forEach((key, value) -> tree.put(
                key, new String[] {value.reason(), value.by(), value.at().toString()}));
        return tree.isEmpty() ? ValuesApart.NONE : JSON.writeValueAsString(tree);
    }

    static Map<String, SetAside> read(String text) {
        Map<String, SetAside> apart = new LinkedHashMap<>();
        if (!text.equals(ValuesApart.NONE)) {
            JSON.readValue(text, TREE)
                    .forEach((key, value) -> apart.put(key, new SetAside(value[0], value[1], Instant.parse(value[2]))));
        }
        return apart;
    }
}

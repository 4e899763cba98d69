package studio.stancebook.classes.layout;

import java.util.Map;
import java.util.Set;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Which values of a package are set aside, as a class reads them from the text in which they are kept. */
public final class ValuesApart {

    /** Nothing is set aside. */
    public static final String NONE = "{}";

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final TypeReference<Map<String, Object>> TREE = new TypeReference<>() {};

    private ValuesApart() {}

    /** The keys of the measures and dimensions that are set aside. */
    static Set<String> keys(String text) {
        return text.equals(NONE) ? Set.of() : JSON.readValue(text, TREE).keySet();
    }
}

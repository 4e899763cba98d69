package studio.stancebook.exchange.importing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import studio.stancebook.problem.Malformed;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;

/** Reads one value from a stream of JSON as maps, lists, texts and numbers, up to a size. */
final class JsonTree {

    /** Three polylines of the most points, and all else a package can have. */
    private static final int MOST_NODES = 60_000;

    private final JsonParser json;
    private final String what;
    private int nodes;

    private JsonTree(JsonParser json, String what) {
        this.json = json;
        this.what = what;
    }

    /**
     * The value that begins at the current token.
     *
     * @param what to call it in the message when it is too large
     */
    static @Nullable Object read(JsonParser json, String what) {
        return new JsonTree(json, what).value(json.currentToken());
    }

    private @Nullable Object value(@Nullable JsonToken token) {
        if (++nodes > MOST_NODES) {
            throw new Malformed(what + " has more than " + MOST_NODES + " values.");
        }
        if (token == null) {
            throw new Malformed(what + " is cut off.");
        }
        return switch (token) {
            case START_OBJECT -> object();
            case START_ARRAY -> array();
            case VALUE_STRING -> json.getString();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number();
            case VALUE_TRUE -> Boolean.TRUE;
            case VALUE_FALSE -> Boolean.FALSE;
            default -> null;
        };
    }

    /** Whole numbers as such while they fit, all others as doubles. */
    private Number number() {
        boolean whole =
                json.currentToken() == JsonToken.VALUE_NUMBER_INT && json.getNumberType() == JsonParser.NumberType.INT;
        return whole ? (Number) json.getIntValue() : (Number) json.getDoubleValue();
    }

    private Map<String, @Nullable Object> object() {
        Map<String, @Nullable Object> map = new LinkedHashMap<>();
        while (json.nextToken() == JsonToken.PROPERTY_NAME) {
            String name = json.currentName();
            map.put(name, value(json.nextToken()));
        }
        return map;
    }

    private List<@Nullable Object> array() {
        List<@Nullable Object> list = new ArrayList<>();
        for (JsonToken token = json.nextToken(); token != JsonToken.END_ARRAY; token = json.nextToken()) {
            list.add(value(token));
        }
        return list;
    }
}

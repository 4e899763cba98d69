package studio.stancebook.hostile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Bodies of requests: mostly what the description asks for, somewhere in them mostly something else. */
final class RandomJson {

    private static final JsonMapper JSON = new JsonMapper();

    private static final String WORKING_DIMENSIONS = """
            {"wheelbase":2800,"overallHeight":1500,"frontTyreDiameter":700,"rearTyreDiameter":700,"overallLength":4700,
             "frontOverhang":850,"rearOverhang":1050,"overallWidth":1850,"cowl":[520,1010],"screenTop":[1150,1430]}""";

    private static final List<String> NUMBERS = List.of(
            "0",
            "-0",
            "-1",
            "1",
            "0.5",
            "2147483647",
            "2147483648",
            "-2147483649",
            "9223372036854775807",
            "9223372036854775808",
            "1e308",
            "1e309",
            "-1e309",
            "1e-320",
            "1e999999999",
            "1e-999999999",
            "0.1000000000000000055511151231257827",
            "9".repeat(400),
            "9".repeat(1100),
            "NaN",
            "-Infinity",
            "01",
            "+1",
            "0x1F",
            ".5",
            "5.");

    private static final List<String> KEYS = Stream.of(
                    Arrays.stream(Dimension.values()).map(Dimension::key),
                    Arrays.stream(Landmark.values()).map(Landmark::key),
                    Arrays.stream(Polyline.values()).map(Polyline::key),
                    Stream.of("frontTyre", "rearTyre", "tyre", "scale", "uncertainties", "origins"))
            .flatMap(Function.identity())
            .toList();

    private final Chance chance;
    private final ApiDescription api;
    private final Words words;

    RandomJson(Chance chance, ApiDescription api, Words words) {
        this.chance = chance;
        this.api = api;
        this.words = words;
    }

    String body(JsonNode schema) {
        String right = value("", schema, 0);
        return switch (chance.below(24)) {
            case 0 -> right.substring(0, chance.below(right.length() + 1));
            case 1 -> right + right;
            case 2 -> "[".repeat(chance.of(10, 500, 1_100, 100_000));
            case 3 -> "{\"a\":".repeat(chance.of(10, 501, 20_000)) + "1";
            case 4 -> anything(0);
            case 5 -> "\uFEFF" + right;
            default -> right;
        };
    }

    private String value(String name, JsonNode described, int depth) {
        if (chance.oneIn(9)) {
            return anything(depth);
        }
        JsonNode schema = api.resolved(described);
        return switch (schema.path("type").asString("")) {
            case "object" -> object(name, schema, depth);
            case "array" -> list(schema, depth);
            case "integer" -> Integer.toString(chance.below(2100));
            case "number" -> number();
            case "boolean" -> chance.of("true", "false");
            default -> quoted(words.fitting(name, chance));
        };
    }

    private String number() {
        return chance.oneIn(4) ? Double.toString(chance.between(0, 1)) : Double.toString(chance.between(-1000, 5000));
    }

    private String object(String name, JsonNode schema, int depth) {
        if (name.equals("dimensions")) {
            return dimensions(depth);
        }
        List<String> members = new ArrayList<>();
        for (Map.Entry<String, JsonNode> member : schema.path("properties").properties()) {
            if (!chance.oneIn(12)) {
                members.add(quoted(member.getKey()) + ":" + value(member.getKey(), member.getValue(), depth + 1));
            }
        }
        if (chance.oneIn(25)) {
            members.add(quoted(HostileText.any(chance)) + ":" + anything(depth));
        }
        if (chance.oneIn(25) && !members.isEmpty()) {
            members.add(chance.of(members));
        }
        return "{" + String.join(",", members) + "}";
    }

    private String dimensions(int depth) {
        if (chance.oneIn(2)) {
            return WORKING_DIMENSIONS;
        }
        return Stream.generate(() -> chance.of(KEYS))
                .limit(1 + chance.below(12))
                .distinct()
                .map(key -> quoted(key) + ":" + dimension(depth))
                .collect(Collectors.joining(",", "{\"wheelbase\":2800" + (chance.oneIn(2) ? "," : ",\"x\":1,"), "}"));
    }

    private String dimension(int depth) {
        return switch (chance.below(6)) {
            case 0 -> anything(depth);
            case 1 -> "[" + number() + "," + number() + "]";
            case 2 ->
                Stream.generate(() -> "[" + number() + "," + number() + "]")
                        .limit(chance.below(40))
                        .collect(Collectors.joining(",", "[", "]"));
            case 3 -> chance.of("\"265/70R17\"", "\"millimetres\"", "\"unscaled\"");
            default -> number();
        };
    }

    private String list(JsonNode schema, int depth) {
        int size = chance.oneIn(20) ? 3_000 : chance.below(5);
        return Stream.generate(() -> value("", schema.path("items"), depth + 1))
                .limit(size)
                .collect(Collectors.joining(",", "[", "]"));
    }

    private String anything(int depth) {
        return switch (chance.below(depth > 4 ? 5 : 7)) {
            case 0, 1 -> chance.of(NUMBERS);
            case 2, 3 -> quoted(HostileText.any(chance));
            case 4 -> chance.of("null", "true", "", "\"\\ud800\"", "\"\\u0000\"", "\"\t\"", "{", "undefined");
            case 5 -> "[" + anything(depth + 1) + "," + anything(depth + 1) + "]";
            default -> "{" + quoted(words.fitting("", chance)) + ":" + anything(depth + 1) + "}";
        };
    }

    private static String quoted(String text) {
        return JSON.writeValueAsString(text);
    }
}

package studio.stancebook.hostile;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import studio.stancebook.hostile.ApiDescription.Call;
import tools.jackson.databind.JsonNode;

/** Makes requests from the description of the API, the same ones for the same seed. */
final class RandomRequests {

    private static final String BOUNDARY = "boundary";

    private final String address;
    private final ApiDescription api;
    private final List<Call> calls;
    private final Words words;
    private final long seed;

    RandomRequests(String address, ApiDescription api, Words words, long seed) {
        this.address = address;
        this.api = api;
        this.calls = api.calls();
        this.words = words;
        this.seed = seed;
    }

    List<Call> calls() {
        return calls;
    }

    /** A request, and what it was made of, for the report of a failure. */
    record Made(String told, HttpRequest request) {}

    /** The request of a number, without credentials. */
    Made request(int number, String token) {
        Chance chance = new Chance(seed, number);
        Call call = calls.get(number % calls.size());
        String method = chance.oneIn(60) ? chance.of("PATCH", "OPTIONS", "DELETE", "PUT", "QUERY") : call.method();
        String path = path(call, chance) + query(call, chance);
        String body = body(call, chance);
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address + path))
                .method(method, body.isEmpty() ? BodyPublishers.noBody() : BodyPublishers.ofString(body));
        if (!chance.oneIn(100)) {
            request.header("Authorization", "Bearer " + (chance.oneIn(100) ? "x" : token));
        }
        headers(call, chance).forEach(header -> request.header(header[0], header[1]));
        String told = "seed " + seed + ", request " + number + ": " + method + " " + path + "\n"
                + body.substring(0, Math.min(2_000, body.length()));
        return new Made(told, request.build());
    }

    private String path(Call call, Chance chance) {
        String path = call.path();
        for (JsonNode parameter : in("path", call)) {
            String name = parameter.path("name").asString();
            path = path.replace("{" + name + "}", segmentOfPath(name, parameter, chance));
        }
        return chance.oneIn(200) ? path + chance.of("/", "//", ";a=b", "/%2e%2e/", "%00", "%2F", "%ff") : path;
    }

    private String segmentOfPath(String name, JsonNode parameter, Chance chance) {
        boolean number = parameter.path("schema").path("type").asString().equals("integer");
        String value = number && !chance.oneIn(6) ? id(chance) : words.fitting(name, chance);
        String encoded = encoded(value.substring(0, Math.min(value.length(), 700)));
        return encoded.isEmpty() ? "%20" : encoded;
    }

    private static String id(Chance chance) {
        return chance.oneIn(8)
                ? chance.of("0", "-1", "9223372036854775807", "9223372036854775808", "1.5", "1e3", "0x1", "2147483648")
                : Integer.toString(1 + chance.below(12));
    }

    private String query(Call call, Chance chance) {
        List<String> parts = new ArrayList<>();
        for (JsonNode parameter : in("query", call)) {
            JsonNode schema = api.resolved(parameter.path("schema"));
            if (schema.has("properties")) {
                schema.path("properties")
                        .properties()
                        .forEach(member -> add(parts, member.getKey(), member.getValue(), chance));
            } else {
                add(parts, parameter.path("name").asString(), schema, chance);
            }
        }
        if (chance.oneIn(30)) {
            parts.add("sort=" + encoded(chance.of("name", "name,desc", HostileText.any(chance))));
        }
        return parts.isEmpty() ? "" : "?" + String.join("&", parts);
    }

    private void add(List<String> parts, String name, JsonNode schema, Chance chance) {
        if (chance.oneIn(3)) {
            int times = chance.oneIn(20) ? 3 : 1;
            for (int i = 0; i < times; i++) {
                parts.add(encoded(name) + "=" + encoded(queryValue(name, schema, chance)));
            }
        }
    }

    private String queryValue(String name, JsonNode schema, Chance chance) {
        String type = schema.path("type").asString("");
        if (chance.oneIn(4)) {
            String text = HostileText.any(chance);
            return text.substring(0, Math.min(text.length(), 500));
        }
        return switch (type) {
            case "integer" -> name.equals("size") ? Integer.toString(chance.below(30)) : id(chance);
            case "number" -> Double.toString(chance.between(-10, 3000));
            case "boolean" -> chance.of("true", "false", "maybe");
            default -> words.fitting(name, chance);
        };
    }

    private String body(Call call, Chance chance) {
        if (call.takesFile()) {
            return "--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\""
                    + chance.of("a.csv", "a.xlsx", "../a", "") + "\"\r\n\r\n"
                    + chance.of("a,b\n1,2\n", "", HostileText.any(chance), "PK\u0003\u0004" + HostileText.any(chance))
                    + "\r\n--" + BOUNDARY + (chance.oneIn(5) ? "" : "--\r\n");
        }
        if (call.body().isMissingNode()) {
            return chance.oneIn(40) ? HostileText.any(chance) : "";
        }
        return new RandomJson(chance, api, words).body(call.body());
    }

    private List<String[]> headers(Call call, Chance chance) {
        List<String[]> headers = new ArrayList<>();
        String type = call.takesFile() ? "multipart/form-data; boundary=" + BOUNDARY : "application/json";
        headers.add(new String[] {
            "Content-Type",
            chance.oneIn(30)
                    ? chance.of(
                            "text/plain",
                            "application/xml",
                            "multipart/form-data",
                            "x",
                            "application/json;charset=UTF-16",
                            "application/json;charset=nothing",
                            "application/x-www-form-urlencoded",
                            "*/*",
                            "a/b;c=\"")
                    : type
        });
        if (chance.oneIn(20)) {
            headers.add(new String[] {
                "Accept",
                chance.of("application/xml", "text/html", "image/*", "garbage", "*/*;q=x", "application/json;q=2")
            });
        }
        if (chance.oneIn(30)) {
            headers.add(new String[] {"Accept-Language", chance.of("xx-yy-zz", "*", "de;q=9", "-", "ar")});
        }
        for (JsonNode parameter : in("header", call)) {
            headers.add(new String[] {parameter.path("name").asString(), headerValue(parameter, chance)});
        }
        return headers;
    }

    private static String headerValue(JsonNode parameter, Chance chance) {
        if (parameter.path("name").asString().equals("If-Match") && !chance.oneIn(4)) {
            return "\"" + chance.below(4) + "\"";
        }
        return chance.of(
                "*",
                "\"0\"",
                "W/\"1\"",
                "1",
                "\"\"",
                "\"9223372036854775808\"",
                "\"-1\"",
                "\"1\", \"2\"",
                "x".repeat(300),
                "key-" + chance.below(50),
                "\"<b>\"",
                " ");
    }

    private static List<JsonNode> in(String place, Call call) {
        return call.parameters().stream()
                .filter(parameter -> parameter.path("in").asString().equals(place))
                .toList();
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}

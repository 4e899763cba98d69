package studio.stancebook.operations;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A program that uses a studio over HTTP. */
public final class StudioApi {

    private static final JsonMapper JSON = new JsonMapper();

    private final HttpClient client = HttpClient.newHttpClient();
    private final URI address;
    private final String authorization;

    private StudioApi(URI address, String authorization) {
        this.address = address;
        this.authorization = authorization;
    }

    /** As the first lead, with a token made now. */
    public static StudioApi asLead(PackagedStudio studio) {
        return asPerson(studio, PackagedStudio.LEAD);
    }

    /** As somebody with the usual password, with a token made now. */
    static StudioApi asPerson(PackagedStudio studio, String email) {
        String login = email + ":" + PackagedStudio.PASSWORD;
        String basic = "Basic " + Base64.getEncoder().encodeToString(login.getBytes(StandardCharsets.UTF_8));
        String token = new StudioApi(studio.address(), basic)
                .made("/api/v1/tokens", "{\"name\": \"tests\"}")
                .get("token")
                .asString();
        return new StudioApi(studio.address(), "Bearer " + token);
    }

    /** Whoever has no token. */
    static StudioApi asNobody(PackagedStudio studio) {
        return new StudioApi(studio.address(), "");
    }

    /** A program that was given a token. */
    static StudioApi withToken(PackagedStudio studio, String token) {
        return new StudioApi(studio.address(), "Bearer " + token);
    }

    /** What it shows to be let in. */
    String authorization() {
        return authorization;
    }

    /** The token alone. */
    public String secret() {
        return authorization.substring("Bearer ".length());
    }

    /** The same program after the server was started anew: its token holds. */
    StudioApi at(PackagedStudio studio) {
        return new StudioApi(studio.address(), authorization);
    }

    HttpResponse<String> get(String path) throws IOException {
        return send(request(path).GET());
    }

    HttpResponse<String> post(String path, String body) throws IOException {
        return send(request(path).header("Content-Type", "application/json").POST(BodyPublishers.ofString(body)));
    }

    HttpResponse<byte[]> postForBytes(String path) throws IOException {
        try {
            return client.send(request(path).POST(BodyPublishers.noBody()).build(), BodyHandlers.ofByteArray());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** Posts what must be accepted. */
    JsonNode made(String path, String body) {
        try {
            HttpResponse<String> answer = post(path, body);
            if (answer.statusCode() != 201) {
                throw new AssertionError("POST " + path + ": " + answer.statusCode() + " " + answer.body());
            }
            return JSON.readTree(answer.body());
        } catch (IOException e) {
            throw new AssertionError("POST " + path + " was not answered", e);
        }
    }

    /** Reads what must be there. */
    JsonNode read(String path) {
        try {
            HttpResponse<String> answer = get(path);
            if (answer.statusCode() != 200) {
                throw new AssertionError("GET " + path + ": " + answer.statusCode() + " " + answer.body());
            }
            return JSON.readTree(answer.body());
        } catch (IOException e) {
            throw new AssertionError("GET " + path + " was not answered", e);
        }
    }

    void addSegment(String key) {
        made("/api/v1/segments", "{\"key\": \"%s\", \"name\": \"%s\", \"description\": \"\"}".formatted(key, key));
    }

    /** Posts a small invented package and returns the status. */
    HttpResponse<String> postPackage(String segment, String name) throws IOException {
        return post("/api/v1/packages", packageJson(segment, name));
    }

    static String packageJson(String segment, String name) {
        return String.format(
                Locale.ROOT,
                "{\"name\": \"%s\", \"segment\": \"%s\", \"dimensions\": {\"wheelbase\": %d, \"frontTyre\": \"265/70R17\"}}",
                name,
                segment,
                2400 + Math.floorMod(name.hashCode(), 800));
    }

    /** The names of all packages, read page by page. */
    Set<String> packageNames() {
        Set<String> names = new HashSet<>();
        long total = Long.MAX_VALUE;
        for (int page = 0; names.size() < total && page * 100L < total; page++) {
            JsonNode answer = read("/api/v1/packages?size=100&page=" + page);
            answer.get("items").forEach(item -> names.add(item.get("name").asString()));
            total = answer.get("total").asLong();
        }
        return names;
    }

    private HttpRequest.Builder request(String path) {
        HttpRequest.Builder builder = HttpRequest.newBuilder(address.resolve(path));
        return authorization.isEmpty() ? builder : builder.header("Authorization", authorization);
    }

    private HttpResponse<String> send(HttpRequest.Builder request) throws IOException {
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}

package studio.stancebook.activity;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One of many programs that write to the same things at once. */
final class Writer {

    private static final JsonMapper JSON = new JsonMapper();

    private final HttpClient client = HttpClient.newHttpClient();
    private final String address;
    private final String token;

    Writer(String address, String token) {
        this.address = address;
        this.token = token;
    }

    /** @param version that the entity tag names; -1 where there is none */
    record Answer(int status, long version, String body) {

        JsonNode json() {
            return JSON.readTree(body);
        }
    }

    Answer get(String path) throws IOException, InterruptedException {
        return send(request(path).GET());
    }

    Answer post(String path, String body) throws IOException, InterruptedException {
        return send(request(path).POST(BodyPublishers.ofString(body)));
    }

    Answer put(String path, String body) throws IOException, InterruptedException {
        return send(request(path).PUT(BodyPublishers.ofString(body)));
    }

    /** @param method PUT or POST */
    Answer write(String method, String path, long expected, String body) throws IOException, InterruptedException {
        return send(
                request(path).header("If-Match", "\"" + expected + "\"").method(method, BodyPublishers.ofString(body)));
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(address + path))
                .header("Authorization", "Bearer " + token)
                .header("Content-Type", "application/json");
    }

    private Answer send(HttpRequest.Builder request) throws IOException, InterruptedException {
        HttpResponse<String> answer = client.send(request.build(), BodyHandlers.ofString());
        long version = answer.headers()
                .firstValue("ETag")
                .map(tag -> Long.valueOf(tag.replace("\"", "")))
                .orElse(-1L);
        return new Answer(answer.statusCode(), version, answer.body());
    }
}

package studio.stancebook.exchange;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.client.RestTestClient;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A file as a program sends it to be brought in, and the answer. */
final class Sent {

    private static final JsonMapper JSON = new JsonMapper();

    private final RestTestClient client;
    private final byte[] file;
    private String name = "cars.csv";
    private final Map<String, String> parameters = new LinkedHashMap<>();
    private String mapping = "";
    private String segments = "";

    private Sent(RestTestClient client, byte[] file) {
        this.client = client;
        this.file = file;
    }

    static Sent by(RestTestClient client, byte[] file) {
        return new Sent(client, file);
    }

    static Sent by(RestTestClient client, String text) {
        return new Sent(client, text.getBytes(StandardCharsets.UTF_8));
    }

    Sent named(String fileName) {
        name = fileName;
        return this;
    }

    Sent with(String parameter, Object value) {
        parameters.put(parameter, value.toString());
        return this;
    }

    Sent mapped(String json) {
        mapping = json;
        return this;
    }

    Sent pointed(String json) {
        segments = json;
        return this;
    }

    /** Sends it, expects this status, and gives the answer. */
    JsonNode expect(int status) {
        MultiValueMap<String, Object> parts = new LinkedMultiValueMap<>();
        parts.add("file", new ByteArrayResource(file) {
            @Override
            public String getFilename() {
                return name;
            }
        });
        if (!mapping.isEmpty()) {
            parts.add("mapping", mapping);
        }
        if (!segments.isEmpty()) {
            parts.add("segments", segments);
        }
        byte[] answer = client.post()
                .uri(builder -> {
                    builder.path("/api/v1/packages/imports");
                    parameters.forEach(builder::queryParam);
                    return builder.build();
                })
                .contentType(MediaType.MULTIPART_FORM_DATA)
                .body(parts)
                .exchange()
                .expectStatus()
                .isEqualTo(status)
                .expectBody(byte[].class)
                .returnResult()
                .getResponseBody();
        return JSON.readTree(answer == null ? new byte[0] : answer);
    }
}

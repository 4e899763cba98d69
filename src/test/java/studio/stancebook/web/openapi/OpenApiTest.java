package studio.stancebook.web.openapi;

import static org.assertj.core.api.Assertions.assertThat;

import com.jayway.jsonpath.JsonPath;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** The description of the API agrees with what the API does. */
@StudioTest
class OpenApiTest {

    @Autowired
    StudioClients studio;

    private String description = "";

    @BeforeEach
    void read() {
        description = studio.browser(Role.VIEWER).get("/v3/api-docs").body();
    }

    @Test
    void describesListsAsTheyAreSent() {
        assertThat(this.<Map<String, ?>>at(
                        "$.paths['/api/v1/people'].get.responses['200'].content['application/json'].schema.properties"))
                .containsOnlyKeys("items", "page", "size", "total");
        assertThat(this.<List<String>>at("$.paths['/api/v1/people'].get.parameters[*].name"))
                .containsExactly("page", "size");
    }

    @Test
    void asksForAPasswordOnlyWhereATokenIsMade() {
        assertThat(this.<List<Map<String, ?>>>at("$.security"))
                .singleElement()
                .asString()
                .contains("token");
        assertThat(this.<List<Map<String, ?>>>at("$.paths['/api/v1/tokens'].post.security"))
                .singleElement()
                .asString()
                .contains("password");
        assertThat(this.<List<?>>at("$.paths['/api/v1/tokens'].get..security")).isEmpty();
    }

    @Test
    void describesProblemsAndKeysOfEveryCall() {
        List<Map<String, ?>> calls = at("$.paths.*.*");
        List<Map<String, ?>> withProblem =
                at("$.paths.*.*[?(@.responses.default.content['application/problem+json'])]");

        assertThat(calls).hasSizeGreaterThan(5).hasSameSizeAs(withProblem);
        assertThat(this.<List<String>>at("$.paths['/api/v1/people'].post.parameters[*].name"))
                .contains("Idempotency-Key");
        assertThat(this.<List<?>>at("$.paths['/api/v1/tokens'].post..parameters"))
                .isEmpty();
    }

    @Test
    void namesEveryCallOnce() {
        assertThat(this.<List<String>>at("$.paths.*.*.operationId"))
                .doesNotHaveDuplicates()
                .noneMatch(id -> id.contains("_"));
        assertThat(this.<Map<String, ?>>at("$.paths").keySet()).allMatch(path -> path.startsWith("/api/v1/"));
    }

    @Test
    void tellsOfNoPrincipalAndNoAddressOfThisServer() {
        assertThat(description)
                .doesNotContain("personId")
                .doesNotContain("localhost")
                .doesNotContain("SignedIn");
    }

    private <T> T at(String path) {
        return JsonPath.read(description, path);
    }
}

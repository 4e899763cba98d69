package studio.stancebook.web.list;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** What may be asked of a list, tried on the list of one's tokens. */
@StudioTest
class BoundedPagesTest {

    @Autowired
    StudioClients studio;

    @ParameterizedTest
    @CsvSource({
        "size=0, size",
        "size=501, size",
        "size=-1, size",
        "size=many, size",
        "size=1e2, size",
        "size=99999999999, size",
        "size=, size",
        "page=-1, page",
        "page=1000001, page",
        "page=x, page",
        "page=%20, page"
    })
    void refusesWhatIsOutOfRange(String query, String field) {
        studio.api(Role.DESIGNER)
                .get()
                .uri(java.net.URI.create(studio.address() + "/api/v1/tokens?" + query))
                .exchange()
                .expectStatus()
                .isBadRequest()
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo(field);
    }

    @ParameterizedTest
    @CsvSource({"size=1, 1", "size=500, 500", "page=1000000, 50", "page=0, 50"})
    void acceptsTheEndsOfTheRanges(String query, int size) {
        studio.api(Role.DESIGNER)
                .get()
                .uri("/api/v1/tokens?" + query)
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.size")
                .isEqualTo(size);
    }

    @Test
    void givesFiftyUnlessAskedOtherwise() {
        studio.api(Role.DESIGNER)
                .get()
                .uri("/api/v1/tokens")
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.page")
                .isEqualTo(0)
                .jsonPath("$.size")
                .isEqualTo(50);
    }
}

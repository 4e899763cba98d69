package studio.stancebook.web.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import org.junit.jupiter.api.Test;

class PageLinksTest {

    @Test
    void leadsToTheNeighboursAndTheEnds() {
        assertThat(links("/api/v1/x", 1, 4))
                .isEqualTo("</api/v1/x?page=0&size=50>; rel=\"first\", </api/v1/x?page=0&size=50>; rel=\"prev\","
                        + " </api/v1/x?page=2&size=50>; rel=\"next\", </api/v1/x?page=3&size=50>; rel=\"last\"");
    }

    @Test
    void hasNoNeighbourBeyondTheEnds() {
        assertThat(links("/x", 0, 1))
                .doesNotContain("prev")
                .doesNotContain("next")
                .contains("first")
                .contains("last");
        assertThat(links("/x", 3, 4)).contains("prev").doesNotContain("next");
    }

    @Test
    void leadsBackFromBeyondTheLastPage() {
        assertThat(links("/x", 9, 2))
                .contains("</x?page=1&size=50>; rel=\"prev\"")
                .doesNotContain("next");
    }

    @Test
    void keepsTheOtherParametersAsTheyWereSent() {
        assertThat(links("/x?q=a%26b%3E%3B&page=7&size=3", 0, 1))
                .startsWith("</x?q=a%26b%3E%3B&page=0&size=50>; rel=\"first\"");
    }

    private static String links(String uri, int page, int pages) {
        return new PageLinks(URI.create("http://studio.example" + uri), page, 50, pages).header();
    }
}

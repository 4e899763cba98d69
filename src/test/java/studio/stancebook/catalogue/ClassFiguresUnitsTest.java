package studio.stancebook.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** The figures of a class, which are kept with it, are written for each reader as they read them. */
@StudioTest
class ClassFiguresUnitsTest {

    private static final String FROM_HORIZONTAL = "Windscreen angle from the horizontal";
    private static final String FROM_VERTICAL = "Windscreen angle from the vertical";

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Test
    void stayThoseOfTheirReaderWhoeverAskedBefore() {
        String segment = Invented.key("leaning");
        segments.create(segment, segment, "");
        for (int degrees = 27; degrees <= 29; degrees++) {
            add(segment, degrees);
        }
        String page = "/segments/" + segment;
        StudioBrowser turned = studio.browser(Role.VIEWER);
        turned.submit(page, "/units", Map.of("angles", "vertical"));

        String fromVertical = turned.get(page).body();
        String fromHorizontal = studio.browser(Role.VIEWER).get(page).body();

        assertThat(fromVertical).contains(FROM_VERTICAL, ">62.0<").doesNotContain(FROM_HORIZONTAL);
        assertThat(fromHorizontal).contains(FROM_HORIZONTAL, ">28.0<").doesNotContain(FROM_VERTICAL);
        assertThat(turned.get(page).body()).contains(FROM_VERTICAL);
    }

    private void add(String segment, int screenAngle) {
        studio.api(Role.LEAD)
                .post()
                .uri("/api/v1/packages")
                .contentType(MediaType.APPLICATION_JSON)
                .body(Map.of(
                        "name",
                        Invented.name("Invented"),
                        "segment",
                        segment,
                        "dimensions",
                        Map.of("wheelbase", 2800, "screenAngle", screenAngle)))
                .exchange()
                .expectStatus()
                .isCreated();
    }
}

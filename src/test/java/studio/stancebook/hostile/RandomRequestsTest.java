package studio.stancebook.hostile;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.TestPropertySource;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;

/** Random requests to the API: {@link Barrage}. The same to the packaged jar: {@code RandomRequestsIT}. */
@StudioTest
@TestPropertySource(properties = "stancebook.hostile=requests")
class RandomRequestsTest {

    private static final int REQUESTS = Barrage.number(3_000);

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    private int leads;

    @Test
    void areAnsweredOrRefusedAndTellNothingOfTheInside() throws IOException, InterruptedException {
        for (String key : Barrage.SEGMENTS) {
            segments.create(key, "Class " + key, "");
            for (int i = 0; i < Barrage.PACKAGES; i++) {
                catalogue.add(Invented.draft(key, Invented.name("Invented"), 2600 + 50 * i), new Author(null, "Tests"));
            }
        }
        String description = studio.browser(Role.VIEWER).get("/v3/api-docs").body();

        new Barrage(studio.address(), description, this::freshLead).send(REQUESTS);
    }

    private String freshLead() {
        return studio.token(studio.add("hostile-" + leads++ + "@studio.example", "Hostile lead", Role.LEAD));
    }
}

package studio.stancebook.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;

/** A ratio that another server on the same database has added, or removed, is noticed and measured here too. */
@StudioTest
class MeasuresOfAnotherServerTest {

    private static final Duration LONGEST = Duration.ofSeconds(30);

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    @Autowired
    JdbcClient database;

    @Test
    void areMeasuredHereToo() {
        String segment = Invented.key("elsewhere");
        String ratio = Invented.key("ratio");
        segments.create(segment, segment, "");
        catalogue.add(Invented.draft(segment, Invented.name("Invented"), 2_800), new Author(null, "Tests"));

        database.sql("""
                        INSERT INTO studio_ratio (ratio_key, name, numerator, denominator, added_by, added_at)
                        VALUES (:key, 'Height over wheelbase', 'overallHeight', 'wheelbase', 'Tests', :now)""")
                .param("key", ratio)
                .param("now", OffsetDateTime.now(ZoneOffset.UTC))
                .update();
        await().atMost(LONGEST)
                .untilAsserted(() -> assertThat(measured(segment)).contains(ratio));

        database.sql("DELETE FROM studio_ratio WHERE ratio_key = :key")
                .param("key", ratio)
                .update();
        await().atMost(LONGEST)
                .untilAsserted(() -> assertThat(measured(segment)).doesNotContain(ratio));
    }

    /** The statistics of the class, which are of the measures that are stored with its packages. */
    private String measured(String segment) {
        return new String(studio.api(Role.LEAD)
                .get()
                .uri("/api/v1/segments/{key}/statistics", segment)
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody(byte[].class)
                .returnResult()
                .getResponseBody());
    }
}

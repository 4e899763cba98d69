package studio.stancebook.measure;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.client.RestTestClient.ResponseSpec;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;

/** The list of measures and the studio's own ratios over HTTP. */
abstract class MeasureCallsTest {

    private static final String RATIO = """
            {"key": "%s", "name": "Cabin over tyres",
             "numerator": ["overallHeight", "cowl.z"], "denominator": ["wheelDiameter"]}""";

    @Autowired
    StudioClients studio;

    private ResponseSpec post(Role role, String body) {
        return studio.api(role)
                .post()
                .uri("/api/v1/measures")
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .exchange();
    }

    @Test
    void listWhatTheRegistryHas() {
        studio.api(Role.VIEWER)
                .get()
                .uri("/api/v1/measures")
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$[0].key")
                .isEqualTo("wheelbase-in-wheels")
                .jsonPath("$[0].unit")
                .isEqualTo("ratio")
                .jsonPath("$[0].needs")
                .isArray()
                .jsonPath("$[0].definition")
                .isNotEmpty()
                .jsonPath("$[0].studio")
                .isEqualTo(false);
    }

    @Test
    void takeARatioOfTheStudioAndGiveItUp() {
        post(Role.LEAD, RATIO.formatted("cabin-over-tyres")).expectStatus().isCreated();
        post(Role.LEAD, RATIO.formatted("cabin-over-tyres")).expectStatus().isEqualTo(409);

        studio.api(Role.VIEWER)
                .get()
                .uri("/api/v1/measures/cabin-over-tyres")
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.definition")
                .isEqualTo("Overall height + Cowl height over Reference tyre diameter D.")
                .jsonPath("$.studio")
                .isEqualTo(true);
        studio.api(Role.LEAD)
                .delete()
                .uri("/api/v1/measures/cabin-over-tyres")
                .exchange()
                .expectStatus()
                .isNoContent();
        studio.api(Role.LEAD)
                .delete()
                .uri("/api/v1/measures/cabin-over-tyres")
                .exchange()
                .expectStatus()
                .isNotFound();
        studio.api(Role.LEAD)
                .delete()
                .uri("/api/v1/measures/wheelbase-in-wheels")
                .exchange()
                .expectStatus()
                .isNotFound();
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"LEAD"},
            mode = EnumSource.Mode.EXCLUDE)
    void takeNoRatioFromAnybodyElse(Role role) {
        post(role, RATIO.formatted("theirs")).expectStatus().isForbidden();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    {"key": "own-one", "name": "Own", "numerator": ["colour"], "denominator": ["wheelbase"]}      | numerator
                    {"key": "own-one", "name": "Own", "numerator": ["wheelbase"], "denominator": []}              | denominator
                    {"key": "own-one", "name": "Own", "numerator": ["wheelbase"], "denominator": ["screenAngle"]} | denominator
                    {"key": "Own one", "name": "Own", "numerator": ["wheelbase"], "denominator": ["wheelbase"]}   | key
                    {"key": "own-one", "numerator": ["wheelbase"], "denominator": ["wheelbase"]}                  | name""")
    void refuseARatioThatCannotBe(String body, String field) {
        post(Role.LEAD, body)
                .expectStatus()
                .isEqualTo(422)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo(field);
    }
}

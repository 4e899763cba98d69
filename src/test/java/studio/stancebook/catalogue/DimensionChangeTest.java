package studio.stancebook.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** One change of a form with what follows it. */
@StudioTest
class DimensionChangeTest {

    @Autowired
    StudioClients studio;

    private HttpResponse<String> change(Map<String, String> more) {
        Map<String, String> form = new HashMap<>(Map.of(
                "dimensions.wheelbase", "2850",
                "dimensions.frontOverhang", "850",
                "dimensions.rearOverhang", "1050",
                "dimensions.overallLength", "4750",
                "dimensions.cowl.x", "520",
                "dimensions.cowl.z", "1160"));
        form.putAll(more);
        return studio.browser(Role.DESIGNER).submit("/account", "/dimensions/change", form);
    }

    @Test
    void lengthFollowsTheWheelbase() {
        HttpResponse<String> answer = change(Map.of("changed", "wheelbase", "to", "2879"));
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body())
                .contains("\"dimensions.wheelbase\":\"2879\"", "\"dimensions.overallLength\":\"4779\"")
                .contains("With it: Overall length");
    }

    @Test
    void anOverhangFollowsIfAsked() {
        assertThat(change(Map.of("changed", "wheelbase", "to", "2879", "givesWay", "rearOverhang"))
                        .body())
                .contains("\"dimensions.rearOverhang\":\"1021\"")
                .doesNotContain("overallLength");
    }

    @Test
    void readsALengthWithAUnitAndWritesInTheUnitOfTheForm() {
        assertThat(change(Map.of("changed", "wheelbase", "to", "112.5 in")).body())
                .contains("\"dimensions.wheelbase\":\"2857.5\"", "\"dimensions.overallLength\":\"4757.5\"");
    }

    @Test
    void movesALandmark() {
        assertThat(change(Map.of("changed", "cowl", "x", "500 mm", "z", "1170 mm"))
                        .body())
                .contains("\"dimensions.cowl.x\":\"500\"", "\"dimensions.cowl.z\":\"1170\"");
    }

    @ParameterizedTest
    @CsvSource({
        "wheelbase, abc, Wheelbase",
        "wheelbase, 9e300, Wheelbase",
        "wheelbase, NaN, Wheelbase",
        "cowl, 1, a length such as",
        "nothing, 1, Name the dimension"
    })
    void refusesWhatItCannotRead(String changed, String to, String says) {
        HttpResponse<String> answer = change(Map.of("changed", changed, "to", to));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains(says);
    }

    @ParameterizedTest
    @CsvSource({"unscaled, 0", "unscaled, -4", "millimetres, 0", "millimetres, -2850"})
    void refusesToChangeWhatCannotBe(String scale, String wheelbase) {
        for (Map<String, String> change : List.of(
                Map.of("changed", "cowl", "x", "500", "z", "1170"),
                Map.of("changed", "frontOverhang", "to", "900"),
                Map.of("changed", "wheelbase", "to", "2850"))) {
            Map<String, String> form = new HashMap<>(change);
            form.put("dimensions.scale", scale);
            form.put("dimensions.wheelbase", wheelbase);
            assertThat(change(form).statusCode()).as(form.toString()).isEqualTo(422);
        }
    }

    @Test
    void isNotForStrangersAndViewers() {
        assertThat(studio.browser(Role.VIEWER)
                        .submit("/account", "/dimensions/change", Map.of("changed", "wheelbase"))
                        .statusCode())
                .isEqualTo(403);
    }
}

package studio.stancebook.geometry.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.client.RestTestClient;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

@StudioTest
class GeometryCallsTest {

    private static final String TYRES = """
            "wheelbase": 1200, "front": {"centreHeight": 300, "radius": 300},
            "rear": {"centreHeight": 300, "radius": 300}""";

    @Autowired
    StudioClients studio;

    @Test
    void answerTheAnglesAndWhereTheyAreLimited() {
        // 600 ahead and level with the centre: asin(300 / 600) = 30 degrees; the same from both sides: 60
        Map<?, ?> answer = angles("{" + TYRES + ", \"underbody\": [[-600, 300], [600, 300]]}");

        assertThat((Double) answer.get("approachDeg")).isCloseTo(30, within(1e-9));
        assertThat((Double) answer.get("rampDeg")).isCloseTo(60, within(1e-9));
        assertThat(answer.get("rampTouch")).isEqualTo(List.of(600.0, 300.0));
        assertThat(answer.get("groundClearanceMm")).isEqualTo(300.0);
        assertThat(answer.containsKey("departureDeg")).isTrue();
        assertThat(answer.get("departureDeg")).isNull();
    }

    @Test
    void takeTheStaticLoadedRadiusOfATyreThatIsLargerThanItsCentreIsHigh() {
        String loaded = "{" + TYRES + ", \"underbody\": [[-600, 310], [600, 200]]}";
        String free = loaded.replace("\"radius\": 300", "\"radius\": 315");

        Map<?, ?> answer = angles(free);

        assertThat(answer.get("approachDeg")).isEqualTo(angles(loaded).get("approachDeg"));
        assertThat(answer.get("notes").toString()).contains("static loaded radius", "300");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "{}; 400; wheelbase",
                "{'wheelbase': 1200, 'rear': {'centreHeight': 1, 'radius': 1}, 'underbody': [[1, 1]]}; 400; front",
                "{T, 'underbody': [[1, null]]}; 400; underbody[0][1]",
                "{T}; 400; underbody",
                "{T, 'underbody': []}; 422; underbody",
                "{T, 'underbody': [[1, 2], [1]]}; 422; underbody[1]",
                "{T, 'underbody': [[1, -2]]}; 422; underbody[0][1]",
                "{T, 'underbody': [[1e400, 2]]}; 422; underbody[0][0]",
                "{T, 'underbody': [[1, 2, 3]]}; 422; underbody[0]",
                "{T, 'underbody': [['one', 2]]}; 400; underbody[0][0]"
            })
    void refuseWhatIsNoSideView(String body, int status, String field) {
        post(body.replace("T", TYRES).replace('\'', '"'))
                .expectStatus()
                .isEqualTo(status)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo(field);
    }

    @Test
    void refuseTyresThatOverlap() {
        post("{" + TYRES.replace("1200", "599") + ", \"underbody\": [[1, 2]]}")
                .expectStatus()
                .isEqualTo(HttpStatus.UNPROCESSABLE_CONTENT)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo("wheelbase");
    }

    @Test
    void takeFiveThousandPointsAndNotOneMore() {
        post("{" + TYRES + ", \"underbody\": " + flat(5000) + "}")
                .expectStatus()
                .isOk();
        post("{" + TYRES + ", \"underbody\": " + flat(5001) + "}")
                .expectStatus()
                .isEqualTo(HttpStatus.UNPROCESSABLE_CONTENT)
                .expectBody()
                .jsonPath("$.detail")
                .value(String.class, detail -> assertThat(detail).contains("5000", "5001"));
    }

    private static String flat(int points) {
        return IntStream.range(0, points)
                .mapToObj(i -> "[" + (400 + 0.05 * i) + ", 200]")
                .collect(Collectors.joining(",", "[", "]"));
    }

    private Map<?, ?> angles(String body) {
        return post(body)
                .expectStatus()
                .isOk()
                .expectBody(Map.class)
                .returnResult()
                .getResponseBody();
    }

    /** A viewer may compute, because nothing is kept. */
    private RestTestClient.ResponseSpec post(String body) {
        return studio.api(Role.VIEWER)
                .post()
                .uri("/api/v1/geometry/angles")
                .contentType(MediaType.APPLICATION_JSON)
                .body(body)
                .exchange();
    }
}

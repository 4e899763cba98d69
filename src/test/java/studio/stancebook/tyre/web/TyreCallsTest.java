package studio.stancebook.tyre.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpStatus;
import org.springframework.test.web.servlet.client.RestTestClient;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

@StudioTest
class TyreCallsTest {

    @Autowired
    StudioClients studio;

    @Test
    void readAMetricSize() {
        // 265 x 0.70 = 185.5: 186; 432 + 2 x 186 = 804
        get("/api/v1/tyres?designation={size}", "lt265/70r17 121/118s")
                .expectStatus()
                .isOk()
                .expectBody()
                .json("""
                        {"designation": "LT265/70R17 121/118S", "notation": "metric", "sectionWidthMm": 265.0,
                         "aspectRatio": 70.0, "rimCode": 17.0, "rimDiameterMm": 432.0, "overallDiameterMm": 804.0,
                         "unroundedDiameterMm": 802.8, "tabulatedDiameterMm": 804.0, "sectionHeightMm": 186.0,
                         "diameterIs": "by-rule", "serviceDescription": "121/118S"}""");
    }

    @Test
    void callTheDiameterOfAFlotationSizeNominal() {
        get("/api/v1/tyres?designation={size}", "35x12.50R17LT")
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.overallDiameterMm")
                .isEqualTo(889.0)
                .jsonPath("$.diameterIs")
                .isEqualTo("nominal")
                .jsonPath("$.tabulatedDiameterMm")
                .isEqualTo(null)
                .jsonPath("$.aspectRatio")
                .isEqualTo(null);
    }

    @Test
    void refuseNonsenseWithTheFieldAndTheValue() {
        get("/api/v1/tyres?designation={size}", "265/70R17 nonsense")
                .expectStatus()
                .isEqualTo(HttpStatus.UNPROCESSABLE_CONTENT)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo("designation")
                .jsonPath("$.detail")
                .value(String.class, detail -> assertThat(detail).contains("'265/70R17 nonsense'", "accepted"));
    }

    @Test
    void askForADesignation() {
        get("/api/v1/tyres").expectStatus().isBadRequest();
    }

    @Test
    void listTheNearestSizes() {
        get("/api/v1/tyres/nearest?diameterMm=780.5&limit=3")
                .expectStatus()
                .isOk()
                .expectBody()
                .jsonPath("$.items.length()")
                .isEqualTo(3)
                .jsonPath("$.items[0].overallDiameterMm")
                .value(Double.class, mm -> assertThat(mm).isBetween(780.0, 781.0))
                .jsonPath("$.items[0].unusual")
                .isBoolean()
                .jsonPath("$.note")
                .exists();
    }

    @Test
    void refuseADiameterThatNoTyreHas() {
        get("/api/v1/tyres/nearest?diameterMm=20")
                .expectStatus()
                .isEqualTo(HttpStatus.UNPROCESSABLE_CONTENT)
                .expectBody()
                .jsonPath("$.errors[0].field")
                .isEqualTo("diameterMm");
        get("/api/v1/tyres/nearest?diameterMm=NaN").expectStatus().isEqualTo(HttpStatus.UNPROCESSABLE_CONTENT);
        get("/api/v1/tyres/nearest?diameterMm=wide").expectStatus().isBadRequest();
        get("/api/v1/tyres/nearest").expectStatus().isBadRequest();
    }

    @Test
    void areForPeopleOfTheStudio() {
        studio.anonymous()
                .get()
                .uri("/api/v1/tyres?designation=205/55R16")
                .exchange()
                .expectStatus()
                .isUnauthorized();
    }

    private RestTestClient.ResponseSpec get(String uri, Object... values) {
        return studio.api(Role.VIEWER).get().uri(uri, values).exchange();
    }
}

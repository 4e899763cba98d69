package studio.stancebook.edge;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OwnAddressTest {

    @ParameterizedTest
    @CsvSource({
        "http://studio.example/proposals?page=2, /proposals?page=2",
        "https://elsewhere.example/proposals, /proposals",
        "https://elsewhere.example//elsewhere.example/x, /",
        "//elsewhere.example, /",
        "//elsewhere.example/x, /x",
        "/\\elsewhere.example, /",
        "elsewhere.example, /",
        "'', /",
        "'/{account}', /",
        "javascript:alert(1), /",
        "/packages/7, /packages/7",
        "/catalogue?q=dunlin%20long&page=2, /catalogue?q=dunlin%20long&page=2",
        "'/a b', /",
        "catalogue, /"
    })
    void isAPathOnThisServerOnly(String wanted, String taken) {
        assertThat(OwnAddress.of(wanted)).isEqualTo(taken);
    }

    @Test
    void endsWhereALineWouldEnd() {
        assertThat(OwnAddress.of("/a\r\nSet-Cookie: a=b")).isEqualTo("/");
    }
}

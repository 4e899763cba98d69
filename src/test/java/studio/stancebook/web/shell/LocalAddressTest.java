package studio.stancebook.web.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LocalAddressTest {

    @ParameterizedTest
    @ValueSource(strings = {"/", "/catalogue", "/catalogue?q=dunlin%20long&page=2", "/stancebook/segments"})
    void keepsAddressesOfThisServer(String address) {
        assertEquals(address, LocalAddress.orHome(address).toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://elsewhere.example/",
                "//elsewhere.example/",
                "///elsewhere.example/",
                "/\\elsewhere.example/",
                "javascript:alert(1)",
                "catalogue",
                "",
                "/a b",
                "/a\r\nSet-Cookie: a=b"
            })
    void leadsHomeInsteadOfElsewhere(String address) {
        assertEquals("/", LocalAddress.orHome(address).toString());
    }
}

package studio.stancebook.account.passkey;

import static org.assertj.core.api.Assertions.assertThat;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mock.env.MockEnvironment;
import studio.stancebook.edge.PublicUrl;

class RelyingPartyTest {

    /** Origins as the URL Standard writes them (4.7); where passkeys are possible: Secure Contexts, 3.1, and a host with a name. */
    @ParameterizedTest
    @CsvSource({
        "https://studio.example, https://studio.example, studio.example, true",
        "HTTPS://Studio.Example:443/, https://studio.example, studio.example, true",
        "https://studio.example:8443, https://studio.example:8443, studio.example, true",
        "http://localhost:80, http://localhost, localhost, true",
        "http://stancebook.localhost:9000, http://stancebook.localhost:9000, stancebook.localhost, true",
        "http://studio.example, http://studio.example, studio.example, false",
        "https://192.0.2.1, https://192.0.2.1, 192.0.2.1, false",
        "'https://[2001:db8::1]:8443', 'https://[2001:db8::1]:8443', [2001:db8::1], false"
    })
    void isTheAddressThatIsSet(String url, String origin, String id, boolean possible) {
        RelyingParty party = party(url);

        assertThat(party.origin()).isEqualTo(origin);
        assertThat(party.id()).isEqualTo(id);
        assertThat(party.isPossible()).isEqualTo(possible);
    }

    @Test
    void isThisMachineWhereNoneIsSet() {
        assertThat(party(null).origin()).isEqualTo("http://localhost:8123");
        assertThat(party(" ").isPossible()).isTrue();
    }

    private static RelyingParty party(@Nullable String url) {
        return new RelyingParty(new PublicUrl(url), new MockEnvironment().withProperty("local.server.port", "8123"));
    }
}

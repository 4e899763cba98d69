package studio.stancebook.account.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** Source: OWASP ASVS 5.0.0, 7.2.3: session tokens of 128 random bits at least, each another. */
@StudioTest
class RandomSessionIdsTest {

    private static final int BITS_ASKED_FOR = 128;

    @Autowired
    private StudioClients studio;

    @Test
    void differInEveryBit() {
        RandomSessionIds ids = new RandomSessionIds();
        Set<String> drawn = new HashSet<>();
        byte[] everSet = new byte[27];
        byte[] alwaysSet = Base64.getUrlDecoder().decode(ids.generate());
        for (int i = 0; i < 1000; i++) {
            String id = ids.generate();
            drawn.add(id);
            byte[] bits = Base64.getUrlDecoder().decode(id);
            for (int at = 0; at < bits.length; at++) {
                everSet[at] |= bits[at];
                alwaysSet[at] &= bits[at];
            }
        }

        assertThat(drawn).hasSize(1000);
        assertThat(everSet).containsOnly(0xff).hasSizeGreaterThanOrEqualTo(BITS_ASKED_FOR / 8);
        assertThat(alwaysSet).containsOnly(0);
    }

    @Test
    void areWhatBrowsersAreGiven() {
        StudioBrowser browser = studio.browser(Role.DESIGNER);

        String cookie = browser.cookie("session");

        String id = new String(Base64.getDecoder().decode(cookie), StandardCharsets.UTF_8);
        assertThat(id).matches("[A-Za-z0-9_-]{36}").doesNotMatch("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");
    }
}

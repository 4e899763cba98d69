package studio.stancebook.account.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import studio.stancebook.account.internal.TokenEntry;
import studio.stancebook.account.internal.TokenScope;

/** Which tokens are marked in the list: our choice of fourteen days, and the end itself. */
class TokenLineTest {

    private static final Instant END = Instant.parse("2031-05-06T07:08:09Z");

    @Test
    void marksNothingUntilFourteenDaysBeforeTheEnd() {
        assertThat(markAt(END.minus(Duration.ofDays(14)).minusMillis(1))).isNull();
        assertThat(markAt(END.minus(Duration.ofDays(14)))).isEqualTo("account.token.soon");
    }

    @Test
    void marksATokenAsExpiredFromItsEndOn() {
        assertThat(markAt(END.minusMillis(1))).isEqualTo("account.token.soon");
        assertThat(markAt(END)).isEqualTo("account.token.expired");
    }

    private static String markAt(Instant now) {
        TokenEntry token = new TokenEntry(1, "plotter", TokenScope.READ, Instant.EPOCH, null, END);
        return TokenLine.of(token, now).mark();
    }
}

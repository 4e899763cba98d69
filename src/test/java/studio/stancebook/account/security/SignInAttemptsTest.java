package studio.stancebook.account.security;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.embedded.EmbeddedDatabaseBuilder;
import org.springframework.jdbc.datasource.embedded.EmbeddedDatabaseType;
import studio.stancebook.TestClock;
import studio.stancebook.problem.TooMany;

/** The limits of decision 0070. */
class SignInAttemptsTest {

    private static final String ADA = "ada@studio.example";
    private static final String HERE = "10.0.0.1";

    private final TestClock clock = new TestClock();
    private final JdbcClient database = JdbcClient.create(new EmbeddedDatabaseBuilder()
            .generateUniqueName(true)
            .setType(EmbeddedDatabaseType.H2)
            .addScript("classpath:db/migration/V021__known_addresses.sql")
            .build());
    private SignInAttempts attempts = afterAStart();

    private SignInAttempts afterAStart() {
        return new SignInAttempts(new KnownAddresses(database, clock), clock);
    }

    @Test
    void closesAfterTenFailuresUntilAQuarterOfAnHourAfterTheFirst() {
        fail(ADA, HERE, 1);
        clock.move(Duration.ofMinutes(5));
        fail(ADA, HERE, 9);

        assertClosed(ADA, HERE);
        assertClosed(" ADA@studio.example", HERE);
        assertThatThrownBy(() -> attempts.begin(ADA, HERE))
                .isInstanceOfSatisfying(
                        TooMany.class,
                        refusal -> assertThat(refusal.retryAfter()).contains("600"));

        clock.move(Duration.ofMinutes(10).minusMillis(1));
        assertClosed(ADA, HERE);
        clock.move(Duration.ofMillis(1));
        assertOpen(ADA, HERE);
    }

    @Test
    void leavesThePersonTheWayInFromElsewhere() {
        for (int i = 0; i < 50; i++) {
            tryOnce(ADA, HERE);
        }

        assertOpen(ADA, "10.0.0.2");
    }

    @Test
    void closesToAnAddressThatTriesManyPeople() {
        for (int person = 0; person < 98; person++) {
            fail("person" + person + "@studio.example", HERE, 1);
        }
        assertOpen(ADA, HERE);
        succeed("somebody@studio.example", HERE);
        fail("one.more@studio.example", HERE, 1);

        assertClosed(ADA, HERE);
        assertOpen(ADA, "10.0.0.2");
    }

    @Test
    void doesNotCountAgainstTheAddressWhatIsClosedToThePerson() {
        for (int i = 0; i < 300; i++) {
            tryOnce(ADA, HERE);
        }

        assertOpen("somebody@studio.example", HERE);
    }

    @Test
    void forgetsFailuresOfThePersonHereOnceThePasswordIsRight() {
        fail(ADA, HERE, 9);
        succeed(ADA, HERE);
        fail(ADA, HERE, 9);

        assertOpen(ADA, HERE);
    }

    @Test
    void closesAPersonToManyAddressesButNotToThoseTheyCameFrom() {
        succeed(ADA, HERE);
        for (int address = 1; address <= 10; address++) {
            fail(ADA, "192.0.2." + address, 10);
        }

        assertClosed(ADA, "192.0.2.200");
        assertOpen("somebody@studio.example", "192.0.2.200");
        assertOpen(ADA, HERE);
        succeed(ADA, HERE);
        assertClosed(ADA, "192.0.2.200");
    }

    /** Whoever is given an IPv6 network has all its addresses, at least 2^64: RFC 4291, 2.5.4. */
    @ParameterizedTest
    @CsvSource({
        "2001:db8:1:2::1, 2001:db8:1:2:ffff::9, true",
        "2001:db8:1:2::1, 2001:db8:1:3::1, false",
        "::ffff:192.0.2.1, ::ffff:192.0.2.2, false"
    })
    void takesANetworkOfIpv6ForOneAddress(String one, String another, boolean same) {
        fail(ADA, one, 10);

        if (same) {
            assertClosed(ADA, another);
        } else {
            assertOpen(ADA, another);
        }
    }

    @Test
    void knowsAfterARestartFromWhereAPersonHasSignedIn() {
        succeed(ADA, HERE);
        succeed(ADA, HERE);

        attempts = afterAStart();
        failFromManyAddresses();

        assertClosed(ADA, "10.9.9.9");
        assertOpen(ADA, HERE);
    }

    @Test
    void forgetsAnAddressAfterThirtyDays() {
        succeed(ADA, HERE);
        clock.move(KnownAddresses.KNOWN_FOR);
        failFromManyAddresses();

        assertClosed(ADA, HERE);
        succeed("bea@studio.example", HERE);
        assertThat(database.sql("SELECT COUNT(*) FROM known_address")
                        .query(Integer.class)
                        .single())
                .isEqualTo(1);
    }

    private void failFromManyAddresses() {
        for (int i = 0; i < SignInAttempts.PER_PERSON; i++) {
            fail(ADA, "10.1.0." + i, 1);
        }
    }

    @Test
    void keepsNothingOnceTheTimeIsOver() {
        fail(ADA, HERE, 3);
        assertThat(attempts.size()).isEqualTo(3);

        clock.move(SignInAttempts.WINDOW);

        assertThat(attempts.size()).isZero();
    }

    private void assertOpen(String email, String address) {
        assertThatCode(() -> attempts.begin(email, address)).doesNotThrowAnyException();
    }

    private void assertClosed(String email, String address) {
        assertThatThrownBy(() -> attempts.begin(email, address)).isInstanceOf(TooMany.class);
    }

    private void fail(String email, String address, int times) {
        for (int i = 0; i < times; i++) {
            attempts.begin(email, address);
        }
    }

    private void tryOnce(String email, String address) {
        try {
            attempts.begin(email, address);
        } catch (TooMany closed) {
            assertThat(closed.retryAfter()).isPresent();
        }
    }

    private void succeed(String email, String address) {
        attempts.succeeded(attempts.begin(email, address));
    }
}

package studio.stancebook.edge;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.util.unit.DataSize;

/**
 * Settings {@code stancebook.limits.*}: what one address may have of the server, and how long it may take. Decision 0075 says
 * why the values are these.
 *
 * @param connectionsPerAddress open at a time
 * @param requestsPerAddress under way at a time
 * @param requestsPerSecond of one address, over some seconds
 * @param timeout how long a connection may be silent, a head may take, a stranger's body may take, and how long the body of
 *     somebody admitted may be slower than {@code bodyRate}
 * @param bodyRate how much of a body must arrive in a second on average
 */
@ConfigurationProperties("stancebook.limits")
record LimitSettings(
        @DefaultValue("512") int connectionsPerAddress,
        @DefaultValue("64") int requestsPerAddress,
        @DefaultValue("250") int requestsPerSecond,
        @DefaultValue("20s") Duration timeout,
        @DefaultValue("16KB") DataSize bodyRate) {

    private static final Duration LONGEST = Duration.ofHours(1);

    LimitSettings {
        check(connectionsPerAddress > 0, "connections-per-address", "a whole number from 1");
        check(requestsPerAddress > 0, "requests-per-address", "a whole number from 1");
        check(requestsPerSecond > 0, "requests-per-second", "a whole number from 1");
        check(timeout.toMillis() > 0 && timeout.compareTo(LONGEST) <= 0, "timeout", "a time from 1ms to 1h");
        check(bodyRate.toBytes() > 0, "body-rate", "a size from 1B");
    }

    private static void check(boolean accepted, String name, String what) {
        if (!accepted) {
            throw new IllegalArgumentException("stancebook.limits." + name + " takes " + what + ".");
        }
    }
}

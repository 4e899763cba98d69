package studio.stancebook.account.security;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Duration;
import java.util.HexFormat;
import java.util.Locale;
import org.springframework.stereotype.Component;
import studio.stancebook.problem.TooMany;

/**
 * Limits wrong passwords (decision 0070): by person and network address together, by network address, and by person over all
 * the addresses from which that person has not signed in before.
 *
 * <p>A try is counted before its password is looked at and taken back if the password was right, so tries in parallel are
 * limited as well. Hashes and counts are kept, nothing that was typed. The counts are lost when the server stops.
 */
@Component
class SignInAttempts {

    static final int PER_PERSON_AND_ADDRESS = 10;
    static final int PER_ADDRESS = 100;
    static final int PER_PERSON = 100;
    static final Duration WINDOW = Duration.ofMinutes(15);

    /** More passwords than eleven processors can hash within the window, at 200 ms each. */
    static final int MOST_KEYS = 50_000;

    private static final int IPV6_BYTES = 16;
    private static final int IPV6_NETWORK_BYTES = 8;

    private final WindowCounter byPersonAndAddress;
    private final WindowCounter byAddress;
    private final WindowCounter byPerson;
    private final KnownAddresses known;

    SignInAttempts(KnownAddresses known, Clock clock) {
        this.known = known;
        byPersonAndAddress = new WindowCounter(PER_PERSON_AND_ADDRESS, WINDOW, MOST_KEYS, clock);
        byAddress = new WindowCounter(PER_ADDRESS, WINDOW, MOST_KEYS, clock);
        byPerson = new WindowCounter(PER_PERSON, WINDOW, MOST_KEYS, clock);
    }

    /** A try that is counted. */
    record Attempt(String person, String address, String both, boolean fromKnownAddress) {}

    /**
     * Counts a try.
     *
     * @throws TooMany if the password is not to be looked at now
     */
    Attempt begin(String email, String address) {
        String person = hash(email.strip().toLowerCase(Locale.ROOT));
        String network = hash(network(address));
        String both = hash(person + network);
        if (!byAddress.tryAcquire(network)) {
            throw tooMany(byAddress.remaining(network));
        }
        if (!byPersonAndAddress.tryAcquire(both)) {
            byAddress.release(network);
            throw tooMany(byPersonAndAddress.remaining(both));
        }
        boolean fromKnownAddress = known.knows(both);
        if (!fromKnownAddress && !byPerson.tryAcquire(person)) {
            byAddress.release(network);
            byPersonAndAddress.release(both);
            throw tooMany(byPerson.remaining(person));
        }
        return new Attempt(person, network, both, fromKnownAddress);
    }

    /**
     * Counts a try to sign in.
     *
     * @throws TooManyAttempts if it is not to be looked at now
     */
    Attempt beginSignIn(String email, String address) {
        try {
            return begin(email, address);
        } catch (TooMany refusal) {
            throw new TooManyAttempts(refusal);
        }
    }

    /** The password was right: the try is not counted, and the earlier ones of this person from this address no longer. */
    void succeeded(Attempt attempt) {
        byAddress.release(attempt.address());
        byPersonAndAddress.reset(attempt.both());
        if (!attempt.fromKnownAddress()) {
            byPerson.release(attempt.person());
        }
        known.remember(attempt.both());
    }

    /** How many keys are kept. */
    long size() {
        return byPersonAndAddress.size() + byAddress.size() + byPerson.size();
    }

    /** Forgets every count. */
    void clear() {
        byPersonAndAddress.clear();
        byAddress.clear();
        byPerson.clear();
    }

    private static TooMany tooMany(Duration wait) {
        return new TooMany("Too many wrong passwords. Wait " + WINDOW.toMinutes() + " minutes, then try again.", wait);
    }

    /** An IPv4 address, or the first half of an IPv6 address: whoever has one of those has all with the same first half. */
    private static String network(String address) {
        if (!address.contains(":")) {
            return address;
        }
        try {
            byte[] bytes = InetAddress.getByName(address).getAddress();
            return HexFormat.of().formatHex(bytes, 0, bytes.length == IPV6_BYTES ? IPV6_NETWORK_BYTES : bytes.length);
        } catch (UnknownHostException e) {
            return address;
        }
    }

    private static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}

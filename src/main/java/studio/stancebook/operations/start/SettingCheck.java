package studio.stancebook.operations.start;

import java.io.IOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.List;
import org.springframework.aot.AotDetector;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.core.env.Environment;
import org.springframework.core.env.PropertySource;
import studio.stancebook.problem.CannotStart;

/** Settings whose value can be judged by itself. */
public final class SettingCheck implements StartCheck {

    private static final int LAST_PORT = 65_535;
    private static final String DEMO = "demo";
    private static final List<String> KNOWN_PROFILES = List.of(DEMO, "default");

    @Override
    public void check(ConfigurableEnvironment environment) {
        checkProfiles(environment);
        checkBeans(environment);
        checkPort(environment);
        checkAddress(environment);
        checkForwardedHeaders(environment);
        checkUrl(environment);
    }

    private static void checkProfiles(ConfigurableEnvironment environment) {
        Arrays.stream(environment.getActiveProfiles())
                .filter(profile -> !KNOWN_PROFILES.contains(profile) && !hasOwnFile(environment, profile))
                .findFirst()
                .ifPresent(profile -> {
                    throw new CannotStart(
                            "There is no profile \"" + profile + "\".",
                            "The only one that comes with the program is \"demo\"; one of your own needs a file"
                                    + " application-" + profile + ".yml beside the jar.");
                });
    }

    /** What the demo studio is made by is not among the beans that were worked out when the jar was built. */
    private static void checkBeans(ConfigurableEnvironment environment) {
        if (AotDetector.useGeneratedArtifacts() && environment.matchesProfiles(DEMO)) {
            throw new CannotStart(
                    "The demo studio cannot be had together with spring.aot.enabled.",
                    "Leave out -Dspring.aot.enabled=true, or the profile \"demo\".");
        }
    }

    private static boolean hasOwnFile(ConfigurableEnvironment environment, String profile) {
        return environment.getPropertySources().stream()
                .map(PropertySource::getName)
                .anyMatch(name -> name.contains("application-" + profile + "."));
    }

    private static void checkPort(Environment environment) {
        String typed = environment.getProperty("server.port", "").strip();
        if (!typed.isEmpty() && !isPort(typed)) {
            throw new CannotStart(
                    "The port \"" + typed + "\" is none: a port is a whole number from 1 to " + LAST_PORT
                            + ", or 0 for any that is free.",
                    "Set STANCEBOOK_PORT to such a number, or leave it out for 8080.");
        }
    }

    private static boolean isPort(String typed) {
        return typed.matches("[0-9]{1,5}") && Integer.parseInt(typed) <= LAST_PORT;
    }

    private static void checkAddress(Environment environment) {
        String typed = environment.getProperty("server.address", "").strip();
        if (!typed.isEmpty() && !isOfThisMachine(typed)) {
            throw new CannotStart(
                    "\"" + typed + "\" is no address of this machine.",
                    "Set STANCEBOOK_ADDRESS to 127.0.0.1 to be reached from this machine only, to 0.0.0.0 to be reached"
                            + " from the network, or to one of this machine's own addresses.");
        }
    }

    private static boolean isOfThisMachine(String typed) {
        try {
            InetAddress address = InetAddress.getByName(typed);
            return address.isAnyLocalAddress()
                    || address.isLoopbackAddress()
                    || NetworkInterface.getByInetAddress(address) != null;
        } catch (UnknownHostException unknown) {
            return false;
        } catch (IOException cannotTell) {
            return true;
        }
    }

    /** Spring Boot's own ways believe headers of anybody, or of any machine in a private network. */
    private static void checkForwardedHeaders(Environment environment) {
        String typed =
                environment.getProperty("server.forward-headers-strategy", "").strip();
        if (!typed.isEmpty() && !typed.equalsIgnoreCase("none")) {
            throw new CannotStart(
                    "SERVER_FORWARD_HEADERS_STRATEGY is \"" + typed + "\", by which forwarded headers would be believed"
                            + " that anybody can send.",
                    "Leave it out, and set STANCEBOOK_TRUSTED_PROXIES to the addresses of your reverse proxies.");
        }
    }

    private static void checkUrl(Environment environment) {
        String url = environment.getProperty("spring.datasource.url", "");
        if (!DatabaseUrl.isOfKnownKind(url)) {
            throw new CannotStart(
                    "\"" + DatabaseUrl.withoutSecrets(url) + "\" is no database that can be used here.",
                    "Set STANCEBOOK_DB_URL to jdbc:postgresql://host/name, or leave it out for a file in the data folder.");
        }
    }
}

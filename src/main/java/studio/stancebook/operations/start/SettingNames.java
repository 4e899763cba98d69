package studio.stancebook.operations.start;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.core.env.EnumerablePropertySource;
import org.springframework.core.env.StandardEnvironment;
import studio.stancebook.problem.CannotStart;

/**
 * Every setting that begins with our name is one that there is. A misspelt one would otherwise do nothing, and nobody would
 * be told.
 */
public final class SettingNames implements StartCheck {

    /** The settings, as environment variables. */
    static final List<String> KNOWN = List.of(
            "STANCEBOOK_ADDRESS",
            "STANCEBOOK_PORT",
            "STANCEBOOK_PUBLIC_URL",
            "STANCEBOOK_TRUSTED_PROXIES",
            "STANCEBOOK_LIMITS_CONNECTIONS_PER_ADDRESS",
            "STANCEBOOK_LIMITS_REQUESTS_PER_ADDRESS",
            "STANCEBOOK_LIMITS_REQUESTS_PER_SECOND",
            "STANCEBOOK_LIMITS_TIMEOUT",
            "STANCEBOOK_LIMITS_BODY_RATE",
            "STANCEBOOK_DATA",
            "STANCEBOOK_DB_URL",
            "STANCEBOOK_DB_USER",
            "STANCEBOOK_DB_PASSWORD",
            "STANCEBOOK_ADMIN_EMAIL",
            "STANCEBOOK_ADMIN_PASSWORD",
            "STANCEBOOK_PASSWORDS_BCRYPT_STRENGTH",
            "STANCEBOOK_STUDIO_NAME",
            "STANCEBOOK_LOG_FORMAT",
            "STANCEBOOK_METRICS_TOKEN",
            "STANCEBOOK_ROOM_RESERVE",
            "STANCEBOOK_RESTORE",
            "STANCEBOOK_VERIFY_RECORD");

    private static final String VARIABLE = "STANCEBOOK_";
    private static final String PROPERTY = "stancebook.";

    /** What Kubernetes puts into the environment beside a service called stancebook; not settings, and not anyone's fault. */
    private static final Pattern OF_ORCHESTRATOR =
            Pattern.compile("STANCEBOOK_(.*_)?(SERVICE_HOST|SERVICE_PORT(_.*)?|PORT_[0-9]+_(TCP|UDP|SCTP)(_.*)?)");

    @Override
    public void check(ConfigurableEnvironment environment) {
        environment.getPropertySources().stream()
                .filter(source -> !StandardEnvironment.SYSTEM_PROPERTIES_PROPERTY_SOURCE_NAME.equals(source.getName()))
                .filter(EnumerablePropertySource.class::isInstance)
                .flatMap(source -> Arrays.stream(((EnumerablePropertySource<?>) source).getPropertyNames()))
                .filter(SettingNames::isMeantForUs)
                .filter(SettingNames::isUnknown)
                .sorted()
                .findFirst()
                .ifPresent(SettingNames::refuse);
    }

    private static boolean isMeantForUs(String name) {
        return name.toUpperCase(Locale.ROOT).startsWith(VARIABLE)
                ? !OF_ORCHESTRATOR.matcher(name).matches()
                : name.startsWith(PROPERTY);
    }

    private static boolean isUnknown(String name) {
        return KNOWN.stream().noneMatch(known -> bare(known).equals(bare(name)));
    }

    /** The name without what separates its words, in which the ways to write it differ. */
    private static String bare(String name) {
        return name.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "");
    }

    private static void refuse(String name) {
        String nearest = nearest(name);
        throw new CannotStart(
                "There is no setting " + name + ".",
                "The nearest that there is: " + nearest
                        + (name.startsWith(PROPERTY) ? ", as an environment variable" : "")
                        + ". Correct it, or leave it out.");
    }

    private static String nearest(String name) {
        return KNOWN.stream()
                .min(Comparator.comparingInt(known -> distance(bare(known), bare(name))))
                .orElseThrow();
    }

    /** The least number of letters to insert, delete or replace to make one of the other (Levenshtein's distance). */
    static int distance(String one, String other) {
        int[] row = Stream.iterate(0, i -> i + 1)
                .limit(other.length() + 1L)
                .mapToInt(Integer::intValue)
                .toArray();
        for (int i = 1; i <= one.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int replaced = diagonal + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[other.length()];
    }
}

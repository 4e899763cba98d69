package studio.stancebook.operations.start;

import java.util.Arrays;
import java.util.List;
import org.springframework.aot.AotDetector;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.core.env.PropertySource;
import studio.stancebook.problem.CannotStart;

/** The profiles are known and can be had. */
public final class ProfileCheck implements StartCheck {

    private static final String DEMO = "demo";
    private static final List<String> KNOWN = List.of(DEMO, "default");

    @Override
    public void check(ConfigurableEnvironment environment) {
        Arrays.stream(environment.getActiveProfiles())
                .filter(profile -> !KNOWN.contains(profile) && !hasOwnFile(environment, profile))
                .findFirst()
                .ifPresent(profile -> {
                    throw new CannotStart(
                            "There is no profile \"" + profile + "\".",
                            "The only one that comes with the program is \"demo\"; one of your own needs a file"
                                    + " application-" + profile + ".yml beside the jar.");
                });
        checkBeans(environment);
    }

    private static boolean hasOwnFile(ConfigurableEnvironment environment, String profile) {
        return environment.getPropertySources().stream()
                .map(PropertySource::getName)
                .anyMatch(name -> name.contains("application-" + profile + "."));
    }

    /** What the demo studio is made by is not among the beans that were worked out when the jar was built. */
    private static void checkBeans(ConfigurableEnvironment environment) {
        if (AotDetector.useGeneratedArtifacts() && environment.matchesProfiles(DEMO)) {
            throw new CannotStart(
                    "The demo studio cannot be had together with spring.aot.enabled.",
                    "Leave out -Dspring.aot.enabled=true, or the profile \"demo\".");
        }
    }
}

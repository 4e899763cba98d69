package studio.stancebook.operations.start;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.boot.EnvironmentPostProcessor;
import org.springframework.boot.SpringApplication;
import org.springframework.core.Ordered;
import org.springframework.core.env.ConfigurableEnvironment;
import org.springframework.core.env.Environment;
import org.springframework.core.env.MapPropertySource;
import studio.stancebook.problem.CannotStart;

/**
 * The setting {@code stancebook.log-format}: lines for people, or an object in JSON for each event. It is looked at before
 * there is a log; a value that is none leaves the lines for people, so that the start can still be refused in words.
 */
public final class LogFormat implements EnvironmentPostProcessor, StartCheck, Ordered {

    private static final String SETTING = "stancebook.log-format";
    private static final String TEXT = "text";
    private static final List<String> STRUCTURED = List.of("ecs", "gelf", "logstash");

    /** After the files with settings were read. */
    @Override
    public int getOrder() {
        return LOWEST_PRECEDENCE;
    }

    @Override
    public void postProcessEnvironment(ConfigurableEnvironment environment, SpringApplication application) {
        String format = of(environment);
        if (STRUCTURED.contains(format)) {
            Map<String, Object> settings = new LinkedHashMap<>();
            settings.put("logging.structured.format.console", format);
            // The banner is no object in JSON.
            settings.put("spring.main.banner-mode", "off");
            environment.getPropertySources().addLast(new MapPropertySource(SETTING, settings));
        }
    }

    @Override
    public void check(ConfigurableEnvironment environment) {
        String format = of(environment);
        if (!TEXT.equals(format) && !STRUCTURED.contains(format)) {
            throw new CannotStart(
                    "There is no log format \"" + format + "\".",
                    "Set STANCEBOOK_LOG_FORMAT to " + TEXT + ", " + String.join(", ", STRUCTURED.subList(0, 2)) + " or "
                            + STRUCTURED.get(2) + ", or leave it out for " + TEXT + ".");
        }
    }

    private static String of(Environment environment) {
        String typed = environment.getProperty(SETTING, "").strip();
        return typed.isEmpty() ? TEXT : typed;
    }
}

package studio.stancebook.operations.start;

import java.net.InetAddress;
import java.time.Duration;
import java.util.Locale;
import java.util.Objects;
import org.springframework.boot.context.properties.bind.BindException;
import org.springframework.boot.diagnostics.AbstractFailureAnalyzer;
import org.springframework.boot.diagnostics.FailureAnalysis;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.core.convert.ConversionException;
import org.springframework.core.env.Environment;
import org.springframework.util.unit.DataSize;

/** Tells a setting that its owner cannot accept. */
@Order(Ordered.HIGHEST_PRECEDENCE)
class SettingAnalyzer extends AbstractFailureAnalyzer<BindException> {

    private static final String WHAT_TO_DO =
            "Correct it where it is set: an environment variable, an argument of the program or a file application.yml; or"
                    + " leave it out.";

    private final Environment environment;

    SettingAnalyzer(Environment environment) {
        this.environment = environment;
    }

    @Override
    protected FailureAnalysis analyze(Throwable failure, BindException cause) {
        Throwable deepest = deepest(cause);
        String sentence = deepest instanceof ConversionException
                ? notConverted(cause)
                : Objects.requireNonNullElse(deepest.getMessage(), cause.getName() + " is not accepted.");
        return new FailureAnalysis(sentence, WHAT_TO_DO, failure);
    }

    private static Throwable deepest(BindException exception) {
        Throwable deepest = exception;
        while (deepest.getCause() != null && !(deepest instanceof ConversionException)) {
            deepest = deepest.getCause();
        }
        return deepest;
    }

    private String notConverted(BindException cause) {
        String name = cause.getName().toString();
        return name + " (as an environment variable: " + variable(name) + ") takes "
                + wanted(cause.getTarget().getType().resolve(Object.class)) + ", not \""
                + environment.getProperty(name, "") + "\".";
    }

    private static String variable(String name) {
        String ours = name.replaceFirst("^server\\.(port|address)$", "stancebook.$1");
        return ours.replace('-', '_').replace('.', '_').toUpperCase(Locale.ROOT);
    }

    private static String wanted(Class<?> type) {
        if (type == boolean.class || type == Boolean.class) {
            return "true or false";
        }
        if (type.isPrimitive() || Number.class.isAssignableFrom(type)) {
            return "a number";
        }
        if (type == InetAddress.class) {
            return "an address of this machine such as 127.0.0.1";
        }
        if (type == Duration.class) {
            return "a time such as 30s or 5m";
        }
        if (type == DataSize.class) {
            return "a size such as 64MB";
        }
        return "another kind of value";
    }
}

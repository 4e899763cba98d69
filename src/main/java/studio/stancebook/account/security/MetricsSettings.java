package studio.stancebook.account.security;

import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;

/**
 * Settings {@code stancebook.metrics.*}.
 *
 * @param token what a program that collects metrics shows instead of the token of a lead; none if it is not set
 */
@ConfigurationProperties("stancebook.metrics")
record MetricsSettings(@Nullable String token) {

    /** The shortest token; drawn at random from letters and digits it has some 120 bits. Our choice. */
    static final int SHORTEST = 20;

    MetricsSettings {
        token = token == null || token.isEmpty() ? null : token;
        if (token != null && (token.length() < SHORTEST || !token.matches("[!-~]+"))) {
            throw new IllegalArgumentException("stancebook.metrics.token (STANCEBOOK_METRICS_TOKEN) takes at least "
                    + SHORTEST + " characters of ASCII without spaces; this one is shorter or has others.");
        }
    }

    /** Without the token, which has no place in a log. */
    @Override
    public String toString() {
        return "MetricsSettings[token " + (token == null ? "not " : "") + "set]";
    }
}

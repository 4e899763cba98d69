package studio.stancebook.edge;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;

/**
 * Setting {@code stancebook.public-url}: the address by which people reach the server.
 *
 * @param publicUrl scheme, host and port if it is not that of the scheme, without a path; none if it is not set
 */
@ConfigurationProperties("stancebook")
public record PublicUrl(@Nullable String publicUrl) {

    private static final int MOST_PORT = 65_535;

    public PublicUrl {
        publicUrl = publicUrl == null || publicUrl.isBlank() ? null : normal(publicUrl.strip());
    }

    /** The address; empty if it is not set. */
    public Optional<URI> uri() {
        return Optional.ofNullable(publicUrl).map(URI::create);
    }

    /** Whether a Host header, or another host with or without a port, is that of this address. */
    static boolean isHostOf(URI url, @Nullable String host) {
        return host != null
                && (host.equalsIgnoreCase(url.getRawAuthority())
                        || host.equalsIgnoreCase(url.getHost() + ":" + port(url)));
    }

    /** The port, which need not be written if it is that of the scheme. */
    static int port(URI url) {
        return url.getPort() > 0 ? url.getPort() : "https".equals(url.getScheme()) ? 443 : 80;
    }

    /** As browsers write an origin: in lower case, without the port that the scheme has anyway. */
    private static String normal(String typed) {
        try {
            URI url = new URI(typed.endsWith("/") ? typed.substring(0, typed.length() - 1) : typed);
            String scheme = Objects.requireNonNullElse(url.getScheme(), "").toLowerCase(Locale.ROOT);
            boolean whole = (scheme.equals("http") || scheme.equals("https"))
                    && url.getHost() != null
                    && url.getPort() <= MOST_PORT
                    && (scheme + "://" + host(url, true)).equalsIgnoreCase(url.toString());
            if (whole) {
                boolean usual = url.getPort() == ("https".equals(scheme) ? 443 : 80);
                return scheme + "://" + host(url, !usual).toLowerCase(Locale.ROOT);
            }
        } catch (URISyntaxException notOne) {
            // told below
        }
        throw new IllegalArgumentException("stancebook.public-url (STANCEBOOK_PUBLIC_URL) takes an address such as"
                + " https://studio.example, without a path; not \"" + typed + "\".");
    }

    private static String host(URI url, boolean withPort) {
        return url.getHost() + (withPort && url.getPort() > 0 ? ":" + url.getPort() : "");
    }
}

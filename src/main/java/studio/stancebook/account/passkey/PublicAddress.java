package studio.stancebook.account.passkey;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;

/**
 * Setting {@code stancebook.public-url}.
 *
 * @param publicUrl where browsers reach this server, such as {@code https://studio.example}; null if it is not set
 */
@ConfigurationProperties("stancebook")
record PublicAddress(@Nullable String publicUrl) {

    PublicAddress {
        publicUrl = publicUrl == null || publicUrl.isBlank() ? null : origin(publicUrl.strip());
    }

    Optional<URI> given() {
        return Optional.ofNullable(publicUrl).map(URI::create);
    }

    /** The address as browsers write an origin: in lower case, without the port that the scheme has anyway. */
    private static String origin(String typed) {
        try {
            URI url = new URI(typed);
            String scheme = String.valueOf(url.getScheme()).toLowerCase(Locale.ROOT);
            if (url.getHost() == null || !scheme.matches("https?") || hasMore(url)) {
                throw refused(typed);
            }
            boolean usual = url.getPort() == -1 || url.getPort() == (scheme.equals("https") ? 443 : 80);
            return scheme + "://" + url.getHost().toLowerCase(Locale.ROOT) + (usual ? "" : ":" + url.getPort());
        } catch (URISyntaxException none) {
            throw refused(typed);
        }
    }

    private static boolean hasMore(URI url) {
        return !(url.getRawPath().isEmpty() || url.getRawPath().equals("/"))
                || url.getRawQuery() != null
                || url.getRawFragment() != null
                || url.getRawUserInfo() != null
                || url.getPort() > 65_535;
    }

    private static IllegalArgumentException refused(String typed) {
        return new IllegalArgumentException("stancebook.public-url (STANCEBOOK_PUBLIC_URL) is " + typed
                + ": it takes an address that begins with https:// or http:// and ends with the host or its port, such as"
                + " https://studio.example.");
    }
}

package studio.stancebook.edge;

import java.net.URI;
import java.net.URISyntaxException;

/** Addresses that came by cookie or form, kept from leading to another server. */
public final class OwnAddress {

    private static final String HOME = "/";

    private OwnAddress() {}

    /** Path and query alone of an address; the board where there is no path. */
    public static String of(String address) {
        try {
            URI wanted = new URI(address);
            String path = wanted.getRawPath();
            if (path == null || !path.startsWith("/") || path.startsWith("//")) {
                path = HOME;
            }
            return wanted.getRawQuery() == null ? path : path + "?" + wanted.getRawQuery();
        } catch (URISyntaxException e) {
            return HOME;
        }
    }
}

package studio.stancebook.web.shell;

import java.net.URI;
import java.net.URISyntaxException;

/** Addresses within this server, so that nobody is sent elsewhere by a link that somebody else made up. */
final class LocalAddress {

    private static final URI HOME = URI.create("/");

    private LocalAddress() {}

    /** The address, if it is a path with or without a query on this server; the board otherwise. */
    static URI orHome(String address) {
        try {
            URI uri = new URI(address);
            boolean local = !uri.isAbsolute()
                    && uri.getRawAuthority() == null
                    && address.startsWith("/")
                    && !address.startsWith("//");
            return local ? uri : HOME;
        } catch (URISyntaxException e) {
            return HOME;
        }
    }
}

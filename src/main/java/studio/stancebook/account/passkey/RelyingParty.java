package studio.stancebook.account.passkey;

import java.net.URI;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;
import studio.stancebook.edge.PublicUrl;

/**
 * What passkeys are made for: the address of this server as browsers see it. Web Authentication Level 3 takes a host with
 * a name (5.1.3, 5.1.4), and browsers offer it in secure contexts only: over TLS, or on localhost.
 */
@Component
public class RelyingParty {

    private final PublicUrl address;
    private final Environment environment;

    RelyingParty(PublicUrl address, Environment environment) {
        this.address = address;
        this.environment = environment;
    }

    /** Where passkeys of this server work, as browsers write it, such as {@code https://studio.example}. */
    public String origin() {
        return uri().toString();
    }

    /** The host alone, which passkeys are bound to. */
    String id() {
        return uri().getHost();
    }

    /** Whether browsers would make passkeys for that address. */
    public boolean isPossible() {
        String host = id();
        boolean isNumber = host.startsWith("[") || host.matches("[0-9.]+");
        boolean isHere = host.equals("localhost") || host.endsWith(".localhost");
        return !isNumber && (isHere || "https".equals(uri().getScheme()));
    }

    /** The address that is set; else this machine, where alone it can be known. */
    private URI uri() {
        return address.uri().orElseGet(this::onThisMachine);
    }

    private URI onThisMachine() {
        String scheme = environment.getProperty("server.ssl.enabled", Boolean.class, false) ? "https" : "http";
        return URI.create(scheme + "://localhost:" + environment.getRequiredProperty("local.server.port"));
    }
}

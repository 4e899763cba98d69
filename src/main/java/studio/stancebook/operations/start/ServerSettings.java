package studio.stancebook.operations.start;

import java.io.IOException;
import java.net.InetAddress;
import java.net.NetworkInterface;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.core.env.Environment;

/**
 * Where the server listens. Spring Boot reads the same settings, but only after the database was opened, and takes more than
 * can be used.
 *
 * @param port 0 for any that is free; 8080 if it is not set
 * @param address one of this machine's; all of them if it is not set
 * @param forwardHeadersStrategy none: Spring Boot's own ways believe headers of anybody, or of any machine in a private
 *     network
 */
@ConfigurationProperties("server")
public record ServerSettings(
        @Nullable Integer port,
        @Nullable InetAddress address,
        @DefaultValue("none") String forwardHeadersStrategy) {

    private static final int LAST_PORT = 65_535;

    public ServerSettings {
        if (port != null && (port < 0 || port > LAST_PORT)) {
            throw new IllegalArgumentException("server.port (STANCEBOOK_PORT) takes a whole number from 1 to "
                    + LAST_PORT + ", or 0 for any that is free; not \"" + port + "\".");
        }
        if (address != null && !isOfThisMachine(address)) {
            throw new IllegalArgumentException("server.address (STANCEBOOK_ADDRESS) takes an address of this machine:"
                    + " 127.0.0.1 to be reached from this machine only, 0.0.0.0 to be reached from the network, or one of"
                    + " its own addresses; not \"" + address.getHostAddress() + "\".");
        }
        if (!forwardHeadersStrategy.isBlank() && !forwardHeadersStrategy.equalsIgnoreCase("none")) {
            throw new IllegalArgumentException("server.forward-headers-strategy (SERVER_FORWARD_HEADERS_STRATEGY) is \""
                    + forwardHeadersStrategy + "\", by which forwarded headers would be believed that anybody can send."
                    + " STANCEBOOK_TRUSTED_PROXIES takes the addresses of your reverse proxies.");
        }
    }

    /** As they are set. */
    public static ServerSettings of(Environment environment) {
        return Binder.get(environment).bindOrCreate("server", ServerSettings.class);
    }

    private static boolean isOfThisMachine(InetAddress address) {
        try {
            return address.isAnyLocalAddress()
                    || address.isLoopbackAddress()
                    || NetworkInterface.getByInetAddress(address) != null;
        } catch (IOException cannotTell) {
            return true;
        }
    }
}

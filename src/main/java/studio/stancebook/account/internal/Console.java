package studio.stancebook.account.internal;

import java.util.List;
import org.springframework.boot.web.server.context.WebServerInitializedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;
import studio.stancebook.edge.PublicUrl;

/**
 * Tells whoever started the server what they need in order to come in. Not the log: what is told is secret, and logs are
 * kept and sent around.
 */
@Component
class Console {

    private static final String RULE = "=".repeat(76);

    private final Environment environment;
    private final PublicUrl publicUrl;
    private int port;

    Console(Environment environment, PublicUrl publicUrl) {
        this.environment = environment;
        this.publicUrl = publicUrl;
    }

    @EventListener
    void started(WebServerInitializedEvent event) {
        port = event.getWebServer().getPort();
    }

    void tell(List<String> lines) {
        StringBuilder box = new StringBuilder("\n" + RULE + "\n");
        lines.forEach(line -> box.append("  ").append(line).append('\n'));
        System.out.println(box.append(RULE));
    }

    /** Where this server is reached: by its public address, if it is set, else from this machine. */
    String address() {
        return publicUrl.uri().map(Object::toString).orElseGet(this::fromThisMachine)
                + environment.getProperty("server.servlet.context-path", "");
    }

    private String fromThisMachine() {
        String bound = environment.getProperty("server.address", "");
        boolean everywhere = bound.isEmpty() || bound.equals("0.0.0.0") || bound.equals("::");
        String scheme = environment.getProperty("server.ssl.enabled", Boolean.class, false) ? "https" : "http";
        return scheme + "://" + (everywhere ? "localhost" : bound) + ":" + port;
    }
}

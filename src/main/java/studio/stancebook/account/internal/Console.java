package studio.stancebook.account.internal;

import java.util.List;
import org.springframework.boot.web.server.context.WebServerInitializedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/**
 * Tells whoever started the server what they need in order to come in. Not the log: what is told is secret, and logs are
 * kept and sent around.
 */
@Component
class Console {

    private static final String RULE = "=".repeat(76);

    private final Environment environment;
    private int port;

    Console(Environment environment) {
        this.environment = environment;
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

    /** Where this server is reached from this machine. */
    String address() {
        String bound = environment.getProperty("server.address", "");
        boolean everywhere = bound.isEmpty() || bound.equals("0.0.0.0") || bound.equals("::");
        String scheme = environment.getProperty("server.ssl.enabled", Boolean.class, false) ? "https" : "http";
        return scheme + "://" + (everywhere ? "localhost" : bound) + ":" + port
                + environment.getProperty("server.servlet.context-path", "");
    }
}

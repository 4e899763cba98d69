package studio.stancebook.edge;

import jakarta.servlet.http.HttpServletRequest;
import java.util.function.BooleanSupplier;
import org.apache.catalina.connector.Request;

/** Whoever sent a request with a body. */
public final class Sender {

    private static final String ATTRIBUTE = Sender.class.getName();

    private Sender() {}

    static void keepIn(Request request) {
        request.setAttribute(ATTRIBUTE, request.getCoyoteRequest().getNote(EdgeProtocol.CLOSED_BY_CLIENT));
    }

    /**
     * Called now and then by work that takes long, in the thread of the request.
     *
     * @throws BodyRefused if the sender has closed the connection, so that nobody will see the answer
     */
    public static void requirePresent(HttpServletRequest request) {
        if (request.getAttribute(ATTRIBUTE) instanceof BooleanSupplier closed && closed.getAsBoolean()) {
            throw new BodyRefused(408, "The connection was closed before the work was done; nothing was kept of it.");
        }
    }
}

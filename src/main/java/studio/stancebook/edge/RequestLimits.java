package studio.stancebook.edge;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;

/**
 * Refuses a request when its address sends too many, or has its share under way already, or the server has as many as it can
 * work on. Whether the server is well may always be asked.
 */
final class RequestLimits extends ValveBase {

    private static final int TOO_MANY_REQUESTS = 429; // RFC 6585, section 4
    private static final String HEALTH = "/actuator/health";

    private final RequestRates rates;
    private final Places underWay;

    RequestLimits(RequestRates rates, Places underWay) {
        super(true);
        this.rates = rates;
        this.underWay = underWay;
    }

    @Override
    public void invoke(Request request, Response response) throws IOException, ServletException {
        if (Addresses.isBelow(HEALTH, request)) {
            getNext().invoke(request, response);
            return;
        }
        String address = request.getRemoteAddr();
        if (!rates.allows(address)) {
            // What was sent after it on this connection is thrown away unread.
            response.setHeader("Connection", "close");
            refuse(response, TOO_MANY_REQUESTS);
            return;
        }
        switch (underWay.take(address)) {
            case ADDRESS_HAS_ITS_SHARE -> refuse(response, TOO_MANY_REQUESTS);
            case FULL -> refuse(response, HttpServletResponse.SC_SERVICE_UNAVAILABLE);
            case TAKEN -> {
                try {
                    getNext().invoke(request, response);
                } finally {
                    underWay.give(address);
                }
            }
        }
    }

    private static void refuse(Response response, int status) throws IOException {
        response.setHeader("Retry-After", "1");
        response.sendError(status);
    }
}

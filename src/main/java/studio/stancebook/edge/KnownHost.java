package studio.stancebook.edge;

import jakarta.servlet.ServletException;
import java.io.IOException;
import java.net.URI;
import java.util.List;
import org.apache.catalina.Globals;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.jspecify.annotations.Nullable;

/**
 * Gives each request the host that the server has, so that what a Host header says gets into no answer: that of the public
 * address, if it is set, and any other is refused; else the one that a trusted proxy tells, or the address and port that the
 * connection came to.
 */
final class KnownHost extends ValveBase {

    private static final int MISDIRECTED_REQUEST = 421; // RFC 9110, section 15.5.20

    /** What is asked from within, where the server goes by other names. */
    private static final String FOR_OPERATORS = "/actuator/";

    /** What the container has taken from these it has taken by now; nobody behind it is to take more. */
    private static final List<String> FORWARDED = List.of(
            "Forwarded",
            "X-Forwarded-For",
            "X-Forwarded-Proto",
            EdgeConfiguration.FORWARDED_HOST,
            "X-Forwarded-Port",
            "X-Forwarded-Prefix",
            "X-Forwarded-Ssl");

    private final @Nullable URI publicUrl;

    KnownHost(PublicUrl publicUrl) {
        super(true);
        this.publicUrl = publicUrl.uri().orElse(null);
    }

    @Override
    public void invoke(Request request, Response response) throws IOException, ServletException {
        boolean toldByProxy = isToldByProxy(request);
        FORWARDED.forEach(request.getCoyoteRequest().getMimeHeaders()::removeHeader);
        if (publicUrl == null) {
            if (!toldByProxy) {
                set(request, literal(request.getLocalAddr()), request.getLocalPort());
            }
        } else if (isMeant(request, publicUrl)) {
            set(request, publicUrl.getHost(), PublicUrl.port(publicUrl));
            request.getCoyoteRequest().scheme().setString(publicUrl.getScheme());
            request.setSecure("https".equals(publicUrl.getScheme()));
        } else {
            response.sendError(MISDIRECTED_REQUEST);
            return;
        }
        getNext().invoke(request, response);
    }

    private static boolean isMeant(Request request, URI publicUrl) {
        return PublicUrl.isHostOf(publicUrl, request.getHeader("Host")) || Addresses.isBelow(FOR_OPERATORS, request);
    }

    /** The valve of the forwarded headers leaves this attribute on what came by a proxy that is trusted. */
    private static boolean isToldByProxy(Request request) {
        return request.getAttribute(Globals.REQUEST_FORWARDED_ATTRIBUTE) != null
                && request.getHeader(EdgeConfiguration.FORWARDED_HOST) != null;
    }

    private static void set(Request request, String host, int port) {
        request.getCoyoteRequest().serverName().setString(host);
        request.getCoyoteRequest().setServerPort(port);
    }

    /** An IPv6 address has brackets in a URL (RFC 3986, section 3.2.2). */
    private static String literal(String address) {
        return address.indexOf(':') >= 0 ? "[" + address + "]" : address;
    }
}

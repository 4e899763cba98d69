package studio.stancebook.edge;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.apache.tomcat.util.http.Parameters;

/** Refuses a query that cannot be decoded, or has too many parameters, before anything asks for one of them. */
final class ReadableQuery extends ValveBase {

    ReadableQuery() {
        super(true);
    }

    @Override
    public void invoke(Request request, Response response) throws IOException, ServletException {
        if (isReadable(request)) {
            getNext().invoke(request, response);
        } else {
            response.sendError(HttpServletResponse.SC_BAD_REQUEST);
        }
    }

    private static boolean isReadable(Request request) {
        if (request.getQueryString() == null) {
            return true;
        }
        Parameters parameters = new Parameters();
        parameters.setLimit(request.getConnector().getMaxParameterCount());
        parameters.setQuery(request.getCoyoteRequest().queryString());
        parameters.setQueryStringCharset(request.getConnector().getURICharset());
        parameters.setURLDecoder(request.getCoyoteRequest().getURLDecoder());
        try {
            parameters.handleQueryParameters();
            return true;
        } catch (InvalidParameterException unreadable) {
            return false;
        }
    }
}

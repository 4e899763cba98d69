package studio.stancebook.web.refusal;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ErrorReportValve;
import org.apache.coyote.ActionCode;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import tools.jackson.databind.json.JsonMapper;

/**
 * Tells what the servlet container refused before any page could: a request line that cannot be read, an address that the
 * firewall does not let in. Says no more than the status, in the form of all other refusals; where not even the address
 * could be read, in that for programs, which people can read as well.
 */
final class BareRefusals extends ErrorReportValve {

    private static final Logger LOG = LoggerFactory.getLogger(BareRefusals.class);
    private static final JsonMapper JSON = new JsonMapper();

    @Override
    protected void report(Request request, Response response, @Nullable Throwable failure) {
        if (response.getStatus() < HttpServletResponse.SC_BAD_REQUEST
                || response.getContentWritten() > 0
                || !response.setErrorReported()
                || !canBeSent(response)) {
            return;
        }
        Problem problem = Statuses.problem(response.getStatus(), HttpHeaders.EMPTY);
        try {
            write(response, problem, isForProgram(request.getRequestURI()));
            response.finishResponse();
        } catch (IOException e) {
            LOG.debug("Nobody was there any more to be told of a refusal", e);
        }
    }

    private static boolean isForProgram(@Nullable String address) {
        return address == null || address.startsWith("/api/");
    }

    private static boolean canBeSent(Response response) {
        AtomicBoolean allowed = new AtomicBoolean();
        response.getCoyoteResponse().action(ActionCode.IS_IO_ALLOWED, allowed);
        return allowed.get();
    }

    /** Every word in it is ours, so there is nothing to escape. */
    private static String page(Problem problem) {
        return "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>"
                + problem.type().title()
                + " – Stancebook</title></head>\n<body><h1>" + problem.type().title() + "</h1><p>" + problem.detail()
                + "</p><p><a href=\"/\">Stancebook</a></p></body></html>\n";
    }

    /** Tells a problem at hardly any cost: there may be hundreds in a second. */
    static void write(HttpServletResponse response, Problem problem, boolean forProgram) throws IOException {
        response.setStatus(problem.status());
        if (forProgram) {
            String json = JSON.writeValueAsString(ProblemJson.of(problem, null));
            send(response, MediaType.APPLICATION_PROBLEM_JSON_VALUE, json);
        } else {
            send(response, "text/html;charset=UTF-8", page(problem));
        }
    }

    private static void send(HttpServletResponse response, String type, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        BareHeaders.set(response);
        response.setContentType(type);
        response.setContentLength(bytes.length);
        response.getOutputStream().write(bytes);
    }
}

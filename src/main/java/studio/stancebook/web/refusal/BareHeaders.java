package studio.stancebook.web.refusal;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;

/** What browsers are told not to do with a refusal that came up before the filters that tell them otherwise. */
final class BareHeaders {

    private static final String POLICY = "Content-Security-Policy";
    private static final String NOTHING =
            "default-src 'none'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'";
    private static final String OURS_ONLY =
            "default-src 'none'; style-src 'self'; script-src 'self'; img-src 'self'; font-src 'self'; connect-src 'self'; "
                    + "form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
    private static final Map<String, String> ALWAYS = Map.of(
            "X-Content-Type-Options", "nosniff",
            "X-Frame-Options", "DENY",
            "Referrer-Policy", "same-origin",
            "Cache-Control", "no-store");

    private BareHeaders() {}

    /** For what shows nothing but itself. */
    static void set(HttpServletResponse response) {
        ALWAYS.forEach(response::setHeader);
        response.setHeader(POLICY, NOTHING);
    }

    /** Where no filter has set any: the address tells whether a program or a browser asks. */
    static void addIfMissing(HttpServletResponse response, boolean forProgram) {
        ALWAYS.forEach((name, value) -> add(response, name, value));
        add(response, POLICY, forProgram ? NOTHING : OURS_ONLY);
    }

    private static void add(HttpServletResponse response, String name, String value) {
        if (!response.containsHeader(name)) {
            response.setHeader(name, value);
        }
    }
}

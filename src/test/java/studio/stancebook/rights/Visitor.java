package studio.stancebook.rights;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.account.Role;

/**
 * Somebody of a role, or a stranger, who asks for anything: on pages by a browser that is signed in and knows the token of
 * forms, on the API by a token.
 */
final class Visitor {

    private static final Pattern FORM_TOKEN =
            Pattern.compile("name=\"csrf\" content=\"([^\"]+)\" data-header=\"([^\"]+)\"");
    private static final String BOUNDARY = "boundary-of-the-tests";

    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(new CookieManager())
            .followRedirects(HttpClient.Redirect.NEVER)
            .build();
    private final StudioClients studio;
    private final Optional<Role> role;
    private String formHeader = "";
    private String formToken = "";

    private Visitor(StudioClients studio, Optional<Role> role) {
        this.studio = studio;
        this.role = role;
        signIn();
    }

    static Visitor of(StudioClients studio, Role role) {
        return new Visitor(studio, Optional.of(role));
    }

    static Visitor stranger(StudioClients studio) {
        return new Visitor(studio, Optional.empty());
    }

    String name() {
        return role.map(Role::name).orElse("none");
    }

    HttpResponse<String> get(String path) {
        return send(new Route("GET", path, Optional.empty()), path);
    }

    /** Asks with what proves who asks, and a body that has in it no more than must be. */
    HttpResponse<String> send(Route route, String path) {
        if (route.isApi()) {
            return send(
                    route,
                    path,
                    role.map(who -> Map.of("Authorization", credentials(route, who)))
                            .orElse(Map.of()));
        }
        return send(route, path, Map.of(formHeader, formToken));
    }

    /** Asks with these headers in place of those that prove who asks; the cookies go along. */
    HttpResponse<String> send(Route route, String path, Map<String, String> headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(studio.address() + path))
                .header("Accept", route.isApi() ? "*/*" : "text/html,*/*;q=0.8");
        headers.forEach(request::header);
        if (route.reads()) {
            request.GET();
        } else {
            addBody(route, request);
        }
        HttpResponse<String> answer = send(request.build());
        if (answer.headers().firstValue("Location").orElse("").endsWith("/sign-in?left")) {
            signIn();
        }
        return answer;
    }

    private String credentials(Route route, Role who) {
        if (!route.name().equals("POST /api/v1/tokens")) {
            return "Bearer " + studio.token(who);
        }
        String pair = studio.person(who).email() + ":" + StudioClients.PASSWORD;
        return "Basic " + Base64.getEncoder().encodeToString(pair.getBytes(StandardCharsets.UTF_8));
    }

    private static void addBody(Route route, HttpRequest.Builder request) {
        if (route.takesFile()) {
            request.header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
                    .method(route.sentMethod(), BodyPublishers.ofString(parts(route)));
        } else if (route.isApi()) {
            request.header("Content-Type", "application/json")
                    .method(route.sentMethod(), BodyPublishers.ofString(route.emptyJson()));
        } else {
            String form =
                    route.neededParameters().stream().map(name -> name + "=0").collect(Collectors.joining("&"));
            request.header("Content-Type", "application/x-www-form-urlencoded")
                    .method(route.sentMethod(), BodyPublishers.ofString(form));
        }
    }

    private static String parts(Route route) {
        String fields = route.neededParameters().stream()
                .map(name ->
                        "--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"" + name + "\"\r\n\r\n{}\r\n")
                .collect(Collectors.joining());
        return fields + "--" + BOUNDARY
                + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.csv\"\r\n\r\na\n1\r\n--" + BOUNDARY
                + "--\r\n";
    }

    private void signIn() {
        readFormToken();
        if (role.isPresent()) {
            Map<String, String> fields =
                    Map.of("email", studio.person(role.get()).email(), "password", StudioClients.PASSWORD);
            HttpResponse<String> answer = send(HttpRequest.newBuilder(URI.create(studio.address() + "/sign-in"))
                    .header(formHeader, formToken)
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(BodyPublishers.ofString(StudioBrowser.form(fields)))
                    .build());
            if (answer.statusCode() != 302) {
                throw new AssertionError(name() + " could not sign in: " + answer.statusCode());
            }
            readFormToken();
        }
    }

    /** From a page that everybody may see. */
    private void readFormToken() {
        Matcher token =
                FORM_TOKEN.matcher(send(HttpRequest.newBuilder(URI.create(studio.address() + "/problems/not-found"))
                                .build())
                        .body());
        if (!token.find()) {
            throw new AssertionError("The page has no token for forms");
        }
        formToken = token.group(1);
        formHeader = token.group(2);
    }

    private HttpResponse<String> send(HttpRequest request) {
        try {
            return client.send(request, BodyHandlers.ofString());
        } catch (IOException e) {
            throw new UncheckedIOException(request.method() + " " + request.uri(), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}

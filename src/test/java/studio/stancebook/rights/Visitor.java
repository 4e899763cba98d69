package studio.stancebook.rights;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.SoftwareAuthenticator;

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
    private final String address;
    private final Optional<SignedIn> who;
    private final String apiToken;
    private String formHeader = "";
    private String formToken = "";

    private Visitor(String address, Optional<SignedIn> who, String apiToken) {
        this.address = address;
        this.who = who;
        this.apiToken = apiToken;
        signIn();
    }

    static Visitor of(StudioClients studio, Role role) {
        return new Visitor(studio.address(), Optional.of(studio.person(role)), studio.token(role));
    }

    /** Somebody with the password of all who are made for tests. */
    static Visitor of(StudioClients studio, SignedIn who) {
        return new Visitor(studio.address(), Optional.of(who), studio.token(who));
    }

    static Visitor stranger(StudioClients studio) {
        return new Visitor(studio.address(), Optional.empty(), "");
    }

    String name() {
        return who.map(somebody -> somebody.role().name()).orElse("none");
    }

    /** Who it is; empty for a stranger. */
    Optional<SignedIn> who() {
        return who;
    }

    HttpResponse<String> get(String path) {
        return send(new Route("GET", path, Optional.empty()), path);
    }

    /** Asks with what proves who asks, and a body that has in it no more than must be. */
    HttpResponse<String> send(Route route, String path) {
        return send(route, path, proof(route));
    }

    /** Asks with these headers in place of those that prove who asks; the cookies go along. */
    HttpResponse<String> send(Route route, String path, Map<String, String> headers) {
        HttpResponse<String> answer = send(route, path, headers, leastBody(route));
        if (answer.headers().firstValue("Location").orElse("").endsWith("/sign-in?left")) {
            signIn();
        }
        return answer;
    }

    /**
     * Asks with what proves who asks, with these headers as well, and with this body; none where it is empty. Whoever signed
     * out by it stays out.
     */
    HttpResponse<String> send(Route route, String path, Map<String, String> more, String body) {
        Map<String, String> headers = new HashMap<>(more);
        headers.putAll(proof(route));
        return send(route, path, headers, sent(route, body));
    }

    /** What a browser sends of a passkey that it was just told to make; nothing where it was not told. */
    String makePasskey() {
        Route options = new Route("POST", "/account/passkeys/options", Optional.empty());
        HttpResponse<String> answer = send(options, options.path(), Map.of(), "label=Passkey+of+every+route");
        String made = answer.statusCode() == 200 ? new SoftwareAuthenticator(address).make(answer.body()) : "";
        return URLEncoder.encode(made, StandardCharsets.UTF_8);
    }

    private Map<String, String> proof(Route route) {
        if (!route.isApi()) {
            return Map.of(formHeader, formToken);
        }
        return who.map(somebody -> Map.of("Authorization", credentials(route, somebody)))
                .orElse(Map.of());
    }

    private HttpResponse<String> send(Route route, String path, Map<String, String> headers, Body body) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(address + path))
                .header("Accept", route.isApi() ? "*/*" : "text/html,*/*;q=0.8");
        headers.forEach(request::header);
        if (route.reads() || body.type().isEmpty()) {
            request.method(route.sentMethod(), BodyPublishers.noBody());
        } else {
            request.header("Content-Type", body.type())
                    .method(route.sentMethod(), BodyPublishers.ofString(body.text()));
        }
        return send(request.build());
    }

    private String credentials(Route route, SignedIn somebody) {
        if (!route.name().equals("POST /api/v1/tokens")) {
            return "Bearer " + apiToken;
        }
        String pair = somebody.email() + ":" + StudioClients.PASSWORD;
        return "Basic " + Base64.getEncoder().encodeToString(pair.getBytes(StandardCharsets.UTF_8));
    }

    /** @param type of the content; empty for none */
    private record Body(String type, String text) {}

    private static Body leastBody(Route route) {
        if (route.takesFile()) {
            return new Body("multipart/form-data; boundary=" + BOUNDARY, leastFields(route) + file("a\n1"));
        }
        if (route.isApi()) {
            return new Body("application/json", route.emptyJson());
        }
        String form = route.neededParameters().stream().map(name -> name + "=0").collect(Collectors.joining("&"));
        return new Body("application/x-www-form-urlencoded", form);
    }

    private static Body sent(Route route, String body) {
        if (route.takesFile()) {
            return new Body("multipart/form-data; boundary=" + BOUNDARY, file(body));
        }
        if (route.isApi()) {
            return new Body(body.isEmpty() ? "" : "application/json", body);
        }
        return new Body("application/x-www-form-urlencoded", body);
    }

    private static String leastFields(Route route) {
        return route.neededParameters().stream()
                .map(name ->
                        "--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"" + name + "\"\r\n\r\n{}\r\n")
                .collect(Collectors.joining());
    }

    private static String file(String text) {
        return "--" + BOUNDARY + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.csv\"\r\n\r\n" + text
                + "\r\n--" + BOUNDARY + "--\r\n";
    }

    private void signIn() {
        readFormToken();
        if (who.isPresent()) {
            Map<String, String> fields = Map.of("email", who.get().email(), "password", StudioClients.PASSWORD);
            HttpResponse<String> answer = send(HttpRequest.newBuilder(URI.create(address + "/sign-in"))
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
        Matcher token = FORM_TOKEN.matcher(send(HttpRequest.newBuilder(URI.create(address + "/problems/not-found"))
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

package studio.stancebook;

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
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * As much of a browser as a page without script needs: keeps cookies, sends forms with the CSRF token of the page they
 * are on, follows no redirect unasked.
 */
public final class StudioBrowser {

    private static final Pattern CSRF = Pattern.compile("name=\"_csrf\"\\s+value=\"([^\"]+)\"");

    private final CookieManager cookies = new CookieManager();
    private final HttpClient client = HttpClient.newBuilder()
            .cookieHandler(cookies)
            .followRedirects(HttpClient.Redirect.NEVER)
            .build();
    private final String address;

    /** @param address of the server, such as {@code http://localhost:8080} */
    public StudioBrowser(String address) {
        this.address = address;
    }

    /** Opens a page. */
    public HttpResponse<String> get(String path) {
        return send(request(path).GET());
    }

    /** Opens a page as it is sent to whoever accepts such encodings. */
    public HttpResponse<byte[]> get(String path, String acceptEncoding) {
        return send(request(path).header("Accept-Encoding", acceptEncoding).GET(), BodyHandlers.ofByteArray());
    }

    /** Opens the page a form is on, and sends the form with its CSRF token. */
    public HttpResponse<String> submit(String pageOfForm, String action, Map<String, String> fields) {
        Matcher token = CSRF.matcher(get(pageOfForm).body());
        if (!token.find()) {
            throw new AssertionError("There is no form with a CSRF token on " + pageOfForm);
        }
        Map<String, String> all = new LinkedHashMap<>(fields);
        all.put("_csrf", token.group(1));
        return post(action, all);
    }

    /** Sends form fields as they are, without a CSRF token. */
    public HttpResponse<String> post(String action, Map<String, String> fields) {
        return send(request(action)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(form(fields))));
    }

    /** Fields as the body of a form. */
    public static String form(Map<String, String> fields) {
        return fields.entrySet().stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
    }

    /** Opens the page a form with a file is on, and sends the form with its CSRF token. */
    public HttpResponse<String> upload(String pageOfForm, String action, String fileName, byte[] file) {
        Matcher token = CSRF.matcher(get(pageOfForm).body());
        if (!token.find()) {
            throw new AssertionError("There is no form with a CSRF token on " + pageOfForm);
        }
        String boundary = "----form-of-the-tests";
        String head = "--" + boundary + "\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\n" + token.group(1)
                + "\r\n--" + boundary + "\r\nContent-Disposition: form-data; name=\"file\"; filename=\"" + fileName
                + "\"\r\nContent-Type: application/octet-stream\r\n\r\n";
        return send(request(action)
                .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                .POST(BodyPublishers.concat(
                        BodyPublishers.ofString(head),
                        BodyPublishers.ofByteArray(file),
                        BodyPublishers.ofString("\r\n--" + boundary + "--\r\n"))));
    }

    /** Signs in by the form, or fails the test. */
    public void signIn(String email, String password) {
        HttpResponse<String> answer = trySigningIn(email, password);
        if (answer.statusCode() != 302) {
            throw new AssertionError(email + " could not sign in: " + answer.statusCode());
        }
    }

    /** Sends the sign-in form. */
    public HttpResponse<String> trySigningIn(String email, String password) {
        return submit("/sign-in", "/sign-in", Map.of("email", email, "password", password));
    }

    /** The value of a cookie as it is now; empty if there is none. */
    public String cookie(String name) {
        return cookies.getCookieStore().getCookies().stream()
                .filter(cookie -> cookie.getName().equals(name))
                .map(java.net.HttpCookie::getValue)
                .findFirst()
                .orElse("");
    }

    /** Puts a cookie in place, as if the server had sent it. */
    public void keep(String name, String value) {
        java.net.HttpCookie cookie = new java.net.HttpCookie(name, value);
        cookie.setPath("/");
        cookie.setVersion(0);
        cookies.getCookieStore().add(URI.create(address), cookie);
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(address + path)).header("Accept", "text/html,*/*;q=0.8");
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        return send(request, BodyHandlers.ofString());
    }

    private <T> HttpResponse<T> send(HttpRequest.Builder request, HttpResponse.BodyHandler<T> body) {
        try {
            return client.send(request.build(), body);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}

package studio.stancebook;

import java.net.http.HttpClient;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.context.annotation.Lazy;
import org.springframework.core.env.Environment;
import org.springframework.data.domain.PageRequest;
import org.springframework.http.HttpHeaders;
import org.springframework.http.client.JdkClientHttpRequestFactory;
import org.springframework.test.web.servlet.client.RestTestClient;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.NewPerson;
import studio.stancebook.account.internal.NewToken;
import studio.stancebook.account.internal.PersonEntry;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.account.internal.TokenService;

/** Ways to talk to the server of a {@link StudioTest}, as nobody or as a person of some role. */
@TestComponent
@Lazy
public class StudioClients {

    /** The password of everybody whom {@link #person} makes. */
    public static final String PASSWORD = "a password for tests";

    private final Map<Role, SignedIn> people = new EnumMap<>(Role.class);
    private final Map<Role, String> tokens = new EnumMap<>(Role.class);
    private final Environment environment;
    private final PersonService personService;
    private final TokenService tokenService;

    StudioClients(Environment environment, PersonService personService, TokenService tokenService) {
        this.environment = environment;
        this.personService = personService;
        this.tokenService = tokenService;
    }

    /** Where the server is, such as {@code http://localhost:40123}. */
    public String address() {
        return "http://localhost:" + environment.getRequiredProperty("local.server.port");
    }

    /** A client without credentials, which follows no redirects and keeps no cookies. */
    public RestTestClient anonymous() {
        return builder().build();
    }

    /** A client that sends a role's token, for the API. */
    public RestTestClient api(Role role) {
        return withToken(token(role));
    }

    /** A client that sends this token. */
    public RestTestClient withToken(String token) {
        return builder()
                .defaultHeader(HttpHeaders.AUTHORIZATION, "Bearer " + token)
                .build();
    }

    /** A browser on which a person of this role has signed in, for pages. */
    public StudioBrowser browser(Role role) {
        StudioBrowser browser = new StudioBrowser(address());
        browser.signIn(person(role).email(), PASSWORD);
        return browser;
    }

    /** A browser on which nobody has signed in. */
    public StudioBrowser browser() {
        return new StudioBrowser(address());
    }

    /** The token of the person of a role, made when first asked for. */
    public synchronized String token(Role role) {
        SignedIn owner = person(role);
        return tokens.computeIfAbsent(role, r -> token(owner));
    }

    /** A token made now. */
    public String token(SignedIn owner) {
        return tokenService.issue(owner, NewToken.named("tests")).secret();
    }

    /** The person of a role, made when first asked for and left as they are by every test. */
    public synchronized SignedIn person(Role role) {
        return people.computeIfAbsent(role, r -> {
            String name = r.name().charAt(0) + r.name().substring(1).toLowerCase(Locale.ROOT);
            return add(r.key() + "@studio.example", name + " of the tests", r);
        });
    }

    /** Makes somebody for one test alone, who signs in with {@link #PASSWORD}. */
    public SignedIn add(String email, String name, Role role) {
        PersonEntry made = personService.addWithOwnPassword(new NewPerson(email, name, role.key(), PASSWORD));
        return new SignedIn(made.id(), made.displayName(), made.email(), made.role());
    }

    /** How many people there are. */
    public long countPeople() {
        return personService.list(PageRequest.of(0, 1)).getTotalElements();
    }

    private RestTestClient.Builder<?> builder() {
        HttpClient client = HttpClient.newBuilder()
                .followRedirects(HttpClient.Redirect.NEVER)
                .build();
        return RestTestClient.bindToServer(new JdkClientHttpRequestFactory(client))
                .baseUrl(address());
    }
}

package studio.stancebook.rights;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/**
 * Asks for everything there is as everybody there can be, and compares with {@code rights.txt}. What this run saw is
 * written to {@code target/rights.txt}, to look at and to take over where it is right.
 */
@StudioTest
class RightsTest {

    private static final Path SEEN = Path.of("target", "rights.txt");

    @Autowired
    ApplicationContext context;

    @Autowired
    StudioClients studio;

    @Test
    void areAsDeclaredForEveryRouteAndRoleAndNoRouteIsWithout() throws IOException {
        List<Visitor> visitors = visitors();
        List<String> seen =
                Routes.of(context).stream().map(route -> line(route, visitors)).toList();
        Files.write(SEEN, seen);
        List<String> declared = declared();

        assertThat(without(seen, declared))
                .as("Lines that rights.txt lacks. Is each what the route should answer? Then put it into "
                        + "src/test/resources/rights.txt in place of the line for the same route, if there is one")
                .isEmpty();
        assertThat(without(declared, seen))
                .as("Lines of src/test/resources/rights.txt for what there is no more: take them out")
                .isEmpty();
    }

    private static List<String> without(List<String> lines, List<String> others) {
        return lines.stream().filter(line -> !others.contains(line)).toList();
    }

    @Test
    void needTheMarkOfTheFormOnEveryPage() {
        Visitor lead = Visitor.of(studio, Role.LEAD);

        assertThat(Routes.of(context))
                .filteredOn(Route::isForm)
                .hasSizeGreaterThan(30)
                .allSatisfy(route -> {
                    HttpResponse<String> answer = lead.send(route, route.pathToNothing(), Map.of());
                    AnswerChecks.check("without mark " + route.name(), route, answer);
                    assertThat(answer.statusCode()).isEqualTo(403);
                    assertThat(answer.body()).contains("without the mark");
                });
    }

    @Test
    void comeWithNoSessionOnTheApi() {
        Visitor lead = Visitor.of(studio, Role.LEAD);

        assertThat(Routes.of(context))
                .filteredOn(Route::isApi)
                .hasSizeGreaterThan(40)
                .allSatisfy(route -> assertThat(lead.send(route, route.pathToNothing(), Map.of())
                                .statusCode())
                        .isEqualTo(401));
    }

    /** But for the metrics, which programs collect. */
    @Test
    void comeWithNoTokenOnPages() {
        Visitor stranger = Visitor.stranger(studio);
        Map<String, String> token = Map.of("Authorization", "Bearer " + studio.token(Role.LEAD));

        assertThat(Routes.of(context))
                .filteredOn(route -> !route.isApi() && route.reads() && !forProgramsToo(route.path()))
                .hasSizeGreaterThan(40)
                .allSatisfy(route -> assertThat(stranger.send(route, route.pathToNothing(), token)
                                .statusCode())
                        .isEqualTo(stranger.send(route, route.pathToNothing()).statusCode()));
    }

    /** The metrics and the description of the API are for programs as well. */
    private static boolean forProgramsToo(String path) {
        return "/actuator/prometheus".equals(path) || path.startsWith("/v3/api-docs");
    }

    private List<Visitor> visitors() {
        List<Visitor> visitors = new ArrayList<>();
        Arrays.stream(Role.values()).forEach(role -> visitors.add(Visitor.of(studio, role)));
        visitors.add(Visitor.stranger(studio));
        return visitors;
    }

    private static String line(Route route, List<Visitor> visitors) {
        String outcomes = visitors.stream()
                .map(visitor -> outcome(route, visitor))
                .map(outcome -> String.format(Locale.ROOT, "%-8s", outcome))
                .collect(Collectors.joining());
        return String.format(Locale.ROOT, "%-6s %-58s %s", route.method(), route.path(), outcomes)
                .strip();
    }

    private static String outcome(Route route, Visitor visitor) {
        HttpResponse<String> answer = visitor.send(route, route.pathToNothing());
        AnswerChecks.check(visitor.name() + " " + route.name(), route, answer);
        return switch (answer.statusCode()) {
            case 401 -> "sign-in";
            case 403 -> "refused";
            case 302 -> isToSignIn(answer) ? "sign-in" : "ok";
            default -> "ok";
        };
    }

    private static boolean isToSignIn(HttpResponse<String> answer) {
        URI to = URI.create(answer.headers().firstValue("Location").orElse(""));
        return "/sign-in".equals(to.getPath()) && to.getQuery() == null;
    }

    private static List<String> declared() throws IOException {
        try (InputStream file = Objects.requireNonNull(RightsTest.class.getResourceAsStream("/rights.txt"))) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(String::strip)
                    .toList();
        }
    }
}

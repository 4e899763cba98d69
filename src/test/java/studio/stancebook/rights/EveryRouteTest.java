package studio.stancebook.rights;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.data.domain.Pageable;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.activity.ActivityFilter;
import studio.stancebook.activity.ActivityLine;
import studio.stancebook.activity.FieldChange;
import studio.stancebook.activity.internal.StoredLines;

/**
 * Asks for what there is, with what is right, as everybody there can be; compares who is answered with {@code
 * every-route.txt}, and what each write leaves in the activity record: who, when, what was changed from what to what.
 */
@StudioTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class EveryRouteTest {

    @Autowired
    ApplicationContext context;

    @Autowired
    StoredLines stored;

    private final Map<String, Stanza> stanzas = Stanza.all().stream()
            .collect(Collectors.toMap(Stanza::asked, Function.identity(), (a, b) -> a, TreeMap::new));
    private final List<Visitor> everybody = new ArrayList<>();
    private Makers makers;
    private SignedIn somebodyElse;
    private Map<String, Route> routes = Map.of();

    @BeforeAll
    void invite() {
        makers = (Makers) context.getAutowireCapableBeanFactory().createBean(Makers.class);
        somebodyElse = makers.somebody(Role.DESIGNER);
        routes = Routes.of(context).stream().collect(Collectors.toMap(Route::name, Function.identity()));
        Arrays.stream(Role.values()).forEach(role -> everybody.add(Visitor.of(makers.studio(), makers.somebody(role))));
        everybody.add(Visitor.stranger(makers.studio()));
    }

    /** They would stand among the measures of other tests. */
    @AfterAll
    void removeRatios() {
        makers.measures().ratios().stream()
                .filter(ratio -> ratio.key().startsWith("every-route"))
                .forEach(ratio -> makers.measures().remove(ratio.key()));
    }

    static List<Stanza> stanzas() {
        return Stanza.all();
    }

    @Test
    void hasAStanzaWhichSaysWhatAWriteLeaves() {
        Set<String> mapped = routes.values().stream()
                .filter(route -> !route.path().contains("*") && !route.method().equals("ANY"))
                .map(Route::name)
                .collect(Collectors.toSet());

        assertThat(stanzas.values().stream().map(Stanza::route).distinct()).containsExactlyInAnyOrderElementsOf(mapped);
        assertThat(stanzas.values())
                .filteredOn(stanza -> !stanza.reads())
                .allSatisfy(stanza ->
                        assertThat(stanza.facts().keySet()).as(stanza.asked()).containsAnyOf("leaves", "each"));
    }

    @ParameterizedTest
    @MethodSource("stanzas")
    void isAnsweredAndRecordedAsItShouldBe(Stanza stanza) {
        List<String> faults = new ArrayList<>();
        walk(stanza, false, faults);
        walk(stanza, true, faults);
        assertThat(faults).as(stanza.asked()).isEmpty();
    }

    private void walk(Stanza stanza, boolean own, List<String> faults) {
        List<String> outcomes = stanza.outcomes(own);
        for (int i = 0; i < outcomes.size(); i++) {
            Visitor visitor = visitor(i, stanza);
            SignedIn owner = own ? visitor.who().orElse(somebodyElse) : somebodyElse;
            ask(stanza, visitor, owner, outcomes.get(i), faults);
        }
    }

    /** Somebody fresh where the request changes whoever asks. */
    private Visitor visitor(int index, Stanza stanza) {
        Visitor usual = everybody.get(index);
        boolean changes =
                stanza.asked().startsWith("POST /account/") || stanza.asked().equals("POST /sign-out");
        if (!changes) {
            return usual;
        }
        return usual.who()
                .map(who -> Visitor.of(makers.studio(), makers.somebody(who.role())))
                .orElseGet(() -> Visitor.stranger(makers.studio()));
    }

    private void ask(Stanza stanza, Visitor visitor, SignedIn owner, String expected, List<String> faults) {
        Things things = new Things(makers, owner);
        String told = visitor.name() + " (" + (owner.equals(somebodyElse) ? "others" : "own") + "): ";
        boolean hides = visitor.name().equals("LEARNER") && owner.equals(somebodyElse);
        if (hides) {
            things.get("proposal");
        }
        stanza.after().ifPresent(before -> prepare(before, things, owner));
        Route route = route(stanza);
        String path = things.path(stanza.address());
        String body = filledFor(visitor, things.filled(stanza.body()));
        Map<String, String> headers = filled(stanza.headers(), things);
        List<FieldChange> changes = changes(stanza, things);
        long before = stored.head().lineCount();
        Instant start = Instant.now().truncatedTo(ChronoUnit.MILLIS);

        HttpResponse<String> answer = visitor.send(route, path, headers, body);
        things.awaitRun();

        AnswerChecks.check(told + path, route, answer);
        String outcome = outcome(answer);
        if (!outcome.equals(expected)) {
            faults.add(told + expected + " expected, but " + outcome + " was answered to " + path + " " + body);
        }
        if (hides && answer.body().contains(things.get("proposal.name")) && !path.contains("Unseen")) {
            faults.add(told + "sees the proposal of somebody else at " + path);
        }
        List<ActivityLine> lines = linesAfter(before);
        if (expected.equals("yes") && stanza.left().isPresent() && visitor.who().isPresent()) {
            checkLines(told, stanza.left().get(), changes, visitor.who().get(), start, lines, faults);
        } else if (!lines.isEmpty()) {
            faults.add(told + "leaves " + lines);
        }
    }

    /** A passkey is made in the session of whoever sends it, so only the visitor can. */
    private static String filledFor(Visitor visitor, String body) {
        return body.contains("{credential}") ? body.replace("{credential}", visitor.makePasskey()) : body;
    }

    private void prepare(String before, Things things, SignedIn owner) {
        Stanza stanza = stanzas.get(before);
        boolean ofLead = stanza.outcomes(true).isEmpty();
        Visitor visitor = ofLead ? everybody.get(Role.LEAD.ordinal()) : Visitor.of(makers.studio(), owner);
        HttpResponse<String> answer = visitor.send(
                route(stanza),
                things.path(stanza.address()),
                filled(stanza.headers(), things),
                things.filled(stanza.body()));
        things.awaitRun();
        assertThat(answer.statusCode()).as("Before: " + before).isLessThan(404);
    }

    private Route route(Stanza stanza) {
        Route route = routes.get(stanza.route());
        if (route == null) {
            throw new AssertionError("There is no route " + stanza.route());
        }
        return route;
    }

    private static Map<String, String> filled(Map<String, String> headers, Things things) {
        return headers.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, header -> things.filled(header.getValue())));
    }

    private static List<FieldChange> changes(Stanza stanza, Things things) {
        return stanza.left().stream()
                .flatMap(left -> left.changes().stream())
                .map(one -> new FieldChange(one.field(), value(one.from(), things), value(one.to(), things)))
                .toList();
    }

    private static String value(String words, Things things) {
        return words.equals("-") ? null : things.filled(words);
    }

    private List<ActivityLine> linesAfter(long before) {
        int number = Math.toIntExact(stored.head().lineCount() - before);
        return number == 0
                ? List.of()
                : stored.page(ActivityFilter.all(), Pageable.ofSize(number)).getContent();
    }

    private static void checkLines(
            String told,
            Stanza.Left left,
            List<FieldChange> changes,
            SignedIn who,
            Instant start,
            List<ActivityLine> lines,
            List<String> faults) {
        boolean number = left.several() ? !lines.isEmpty() : lines.size() == 1;
        if (!number) {
            faults.add(told + lines.size() + " lines: " + lines);
        }
        for (ActivityLine line : lines) {
            boolean right = (line.action() + " " + line.kind()).equals(left.deed())
                    && line.by().equals(who.name())
                    && Long.valueOf(who.personId()).equals(line.byId())
                    && !line.at().isBefore(start)
                    && !line.at().isAfter(Instant.now())
                    && line.changes().containsAll(changes);
            if (!right) {
                faults.add(told + left.deed() + " " + changes + " expected, but the line is " + line);
            }
        }
    }

    private static String outcome(HttpResponse<String> answer) {
        return switch (answer.statusCode()) {
            case 200, 201, 204 -> "yes";
            case 302, 303 -> isToSignIn(answer) ? "sign-in" : "yes";
            case 401 -> "sign-in";
            case 403 -> "no";
            case 404 -> "hidden";
            default -> answer.statusCode() + " " + answer.body();
        };
    }

    private static boolean isToSignIn(HttpResponse<String> answer) {
        URI to = URI.create(answer.headers().firstValue("Location").orElse(""));
        return "/sign-in".equals(to.getPath()) && to.getQuery() == null;
    }
}

package studio.stancebook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.data.domain.Pageable;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.TestPropertySource;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.PackageSummary;
import studio.stancebook.dimension.Reading;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.measure.StudioRatio;
import studio.stancebook.problem.ProblemType;
import studio.stancebook.proposal.ProposalFilter;
import studio.stancebook.proposal.ProposalSummary;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.rights.Route;
import studio.stancebook.rights.Routes;

/**
 * Every page of the demo studio, found by the routes that are mapped: accessible in both themes, wide and narrow; no wider
 * than any window; headings in order. A new page with variables in its address fails the test until {@link #things}
 * knows what to put there.
 */
@StudioTest
@ActiveProfiles("demo")
@TestPropertySource(properties = "stancebook.data=target/every-page")
class EveryPageIT {

    private static final String SEGMENT = "off-road-suv";

    /** Looked at by strangers below; a part of the report on a table. */
    private static final Set<String> ELSEWHERE = Set.of("/setup", "/bring-in/{id}/progress");

    private static final Pattern ELEMENT = Pattern.compile("<([a-z0-9]+)(?:[^>]* class=\"([^\"]*)\")?[^>]*>");

    @RegisterExtension
    static final Chromium chromium = new Chromium();

    @Autowired
    ApplicationContext context;

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Proposals proposals;

    @Autowired
    StudioMeasures measures;

    @Test
    void meetsTheRulesInBothThemesAtEveryWidthForEveryRole() {
        StudioBrowser asking = studio.browser(Role.LEAD);
        Set<String> addresses = addresses(asking);
        Set<String> shapes = new HashSet<>();
        List<String> faults = new ArrayList<>();
        for (Role role : List.of(Role.LEAD, Role.DESIGNER, Role.TUTOR, Role.LEARNER, Role.VIEWER)) {
            StudioBrowser browser = studio.browser(role);
            try (BrowserVisit visit = BrowserVisit.of(studio.person(role), chromium, studio, ColorScheme.LIGHT, 1280)) {
                for (String address : addresses) {
                    HttpResponse<String> answer = browser.get(address);
                    boolean shown = isWholePage(answer) && answer.statusCode() != 403 && answer.statusCode() != 404;
                    if (shown && shapes.add(address + shape(answer))) {
                        visit.open(address);
                        faults.addAll(faults(role, address, visit));
                    }
                }
                checkAnUpload(role, visit);
                assertThat(visit.complaints()).isEmpty();
            }
        }
        assertThat(faults).isEmpty();
    }

    /** Others have a part of what a lead has, in the same colours and columns. */
    private static List<String> faults(Role role, String address, BrowserVisit visit) {
        try {
            if (role == Role.LEAD) {
                visit.meetsTheRulesThroughout(role + " " + address);
            } else {
                visit.meetsTheRules(role + " " + address);
            }
            return List.of();
        } catch (AssertionError fault) {
            return List.of(String.valueOf(fault.getMessage()));
        }
    }

    @Test
    void meetsTheRulesForStrangersAndWhereThereIsNothing() {
        try (BrowserVisit visit = BrowserVisit.ofStranger(chromium, studio, ColorScheme.LIGHT, 1280)) {
            for (String address : List.of("/sign-in", "/sign-in?error", "/setup")) {
                visit.open(address);
                visit.meetsTheRulesThroughout("stranger " + address);
            }
            visit.signIn(studio.person(Role.VIEWER));
            for (String address : List.of("/no/such/page", "/packages/999999999", "/studio/people")) {
                visit.open(address);
                visit.meetsTheRulesThroughout("viewer " + address);
            }
        }
    }

    /** Every page that a lead is shown, each under one address or more. */
    private Set<String> addresses(StudioBrowser lead) {
        Map<String, List<String>> things = things(lead);
        Set<String> addresses = new LinkedHashSet<>();
        for (Route route : Routes.of(context)) {
            if (!route.isPage() || route.path().contains("*") || ELSEWHERE.contains(route.path())) {
                continue;
            }
            for (String address : filled(route.path(), things)) {
                HttpResponse<String> answer = lead.get(address);
                assertThat(answer.statusCode())
                        .as("%s, asked for as %s", route.name(), address)
                        .isIn(200, 302);
                if (isWholePage(answer)) {
                    addresses.add(address);
                }
            }
        }
        addresses.addAll(further());
        assertThat(addresses).hasSizeGreaterThan(40);
        return addresses;
    }

    /** A path for each thing that may stand in place of its variable; for the first alone where the path goes on after it. */
    private static List<String> filled(String path, Map<String, List<String>> things) {
        if (!path.contains("{")) {
            return List.of(path);
        }
        return things.entrySet().stream()
                .filter(thing -> (path + "/").startsWith(thing.getKey() + "/"))
                .max((one, other) ->
                        Integer.compare(one.getKey().length(), other.getKey().length()))
                .map(thing -> thing.getValue().stream()
                        .limit(path.equals(thing.getKey()) ? Long.MAX_VALUE : 1)
                        .map(place -> place + path.substring(thing.getKey().length()))
                        .toList())
                .filter(found -> found.stream().noneMatch(address -> address.contains("{")))
                .orElseThrow(
                        () -> new AssertionError("Nothing is known to put into " + path + "; see EveryPageIT.things"));
    }

    /** What stands in addresses, by the part of the route that ends with its variable. */
    private Map<String, List<String>> things(StudioBrowser lead) {
        measures.add(
                new StudioRatio(
                        "cab-over-wheelbase",
                        "Overhang of wheelbase",
                        List.of(Reading.FRONT_OVERHANG),
                        List.of(Reading.WHEELBASE)),
                new Author(null, "Tests"));
        Map<String, List<String>> things = new LinkedHashMap<>();
        things.put("/packages/{id}", List.of("/packages/" + packages().get(0).id()));
        things.put(
                "/proposals/{id}",
                Stream.of("Tern", "Pintail", "Sanderling sketch")
                        .map(name -> "/proposals/" + proposal(name).id())
                        .toList());
        things.put("/segments/{key}", List.of("/segments/" + SEGMENT));
        things.put("/segments/{segment}", List.of("/segments/" + SEGMENT));
        things.put("/segments/{segment}/bands/{measure}", List.of("/segments/" + SEGMENT + "/bands/approach-angle"));
        things.put(
                "/studio/people/{id}",
                List.of("/studio/people/" + studio.person(Role.DESIGNER).personId()));
        things.put("/studio/ratios/{key}", List.of("/studio/ratios/cab-over-wheelbase"));
        things.put("/problems/{slug}", List.of("/problems/" + ProblemType.values()[0].slug()));
        things.put("/bring-in/{id}", List.of(uploaded(lead)));
        return things;
    }

    /** What else is worth a look. */
    private List<String> further() {
        String packages = packages().stream()
                .limit(4)
                .map(one -> "of=package-" + one.id())
                .collect(Collectors.joining("&"));
        long tern = proposal("Tern").id();
        long shelduck = proposal("Shelduck").id();
        return List.of(
                "/catalogue?view=pictures&measure=wheelbase-in-wheels",
                "/catalogue?q=nothing+of+the+kind&fromYear=x",
                "/compare?" + packages + "&of=proposal-" + tern + "&of=proposal-" + shelduck + "&scale=wheels",
                "/proposals?stage=shelved",
                "/proposals/" + proposal("Pintail").id() + "?revision=2",
                "/segments/" + SEGMENT + "/bands/approach-angle?method=tolerance",
                "/studio/record?subject=no-such-thing",
                "/underlay?proposal=" + tern,
                "/underlay?segment=" + SEGMENT + "&tyre=nothing");
    }

    private String uploaded(StudioBrowser lead) {
        byte[] table = lead.get("/bring-in/example.csv").body().getBytes(StandardCharsets.UTF_8);
        HttpResponse<String> sent = lead.upload("/bring-in", "/bring-in", "example.csv", table);
        return URI.create(sent.headers().firstValue("Location").orElseThrow()).getPath();
    }

    /** The report on a table, which only the person who brought it sees. */
    private void checkAnUpload(Role role, BrowserVisit visit) {
        if (role != Role.LEAD) {
            return;
        }
        StudioBrowser lead = studio.browser(role);
        Page page = visit.open(uploaded(lead));
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Check it"))
                .click();
        page.waitForURL(address -> address.endsWith("/report"));
        page.locator("progress")
                .waitFor(new com.microsoft.playwright.Locator.WaitForOptions()
                        .setState(com.microsoft.playwright.options.WaitForSelectorState.DETACHED));
        visit.meetsTheRulesThroughout("report on a table");
    }

    private List<PackageSummary> packages() {
        return catalogue
                .search(CatalogueFilter.ofSegment(SEGMENT), Pageable.ofSize(6))
                .getContent();
    }

    private ProposalSummary proposal(String name) {
        return proposals.list(ProposalFilter.all(), Pageable.ofSize(50), studio.person(Role.LEAD)).stream()
                .filter(summary -> summary.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static boolean isWholePage(HttpResponse<String> answer) {
        return answer.body().contains("<main class=\"page__main\"");
    }

    /** Its elements and their classes: pages of one shape look alike, whoever sees them. */
    private static String shape(HttpResponse<String> answer) {
        List<String> elements = new ArrayList<>();
        ELEMENT.matcher(answer.body())
                .results()
                .map(EveryPageIT::element)
                .distinct()
                .forEach(elements::add);
        return elements.toString();
    }

    private static String element(MatchResult found) {
        return found.group(1) + "." + found.group(2);
    }
}

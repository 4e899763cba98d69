package studio.stancebook.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.TestPropertySource;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.account.Role;
import studio.stancebook.account.SignedIn;
import studio.stancebook.account.internal.TokenDesk;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.hostile.RandomRequests.Made;
import studio.stancebook.rights.AnswerChecks;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Random requests made from the description of the API: whatever comes, the answer is an answer or a refusal, and tells
 * nothing of the inside. {@code -Dstancebook.requests=100000} sends more, {@code -Dstancebook.seed=7} others.
 */
@StudioTest
@TestPropertySource(properties = "stancebook.hostile=requests")
class RandomRequestsTest {

    private static final int REQUESTS = Integer.getInteger("stancebook.requests", 3_000);
    private static final long SEED = Long.getLong("stancebook.seed", 20_261_125L);
    private static final List<String> MEASURES =
            List.of("wheelbase-in-wheels", "height-in-wheels", "screen-aim-in-wheels", "wheels-spanned");
    private static final int MOST_FAULTS = 20;
    private static final JsonMapper JSON = new JsonMapper();

    @Autowired
    StudioClients studio;

    @Autowired
    TokenDesk desk;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    private final HttpClient client = HttpClient.newHttpClient();
    private final Map<Integer, Integer> statuses = new TreeMap<>();
    private final Map<String, String> faults = new TreeMap<>();
    private int leads;
    private String token = "";

    @Test
    void areAnsweredOrRefusedAndTellNothingOfTheInside() throws IOException, InterruptedException {
        RandomRequests requests = requests();
        takeOnLead();
        for (int number = 0; number < REQUESTS; number++) {
            Made made = requests.request(number, token);
            HttpResponse<String> answer = client.send(made.request(), BodyHandlers.ofString());
            statuses.merge(answer.statusCode(), 1, Integer::sum);
            note(made.told(), answer);
            renewIfDismissed(answer);
        }
        System.out.println(REQUESTS + " requests, seed " + SEED + ", answers by status: " + statuses);

        assertThat(faults).isEmpty();
        assertThat(requests.calls()).hasSizeGreaterThan(40);
        assertThat(statuses)
                .as("some are right, and some are wrong in every way")
                .containsKeys(200, 201, 400, 404, 422);
    }

    private RandomRequests requests() {
        List<String> keys = List.of("hostile-a", "hostile-b");
        for (String key : keys) {
            segments.create(key, "Class " + key, "");
            for (int i = 0; i < 6; i++) {
                catalogue.add(Invented.draft(key, Invented.name("Invented"), 2600 + 50 * i), "Tests");
            }
        }
        ApiDescription api = new ApiDescription(
                studio.browser(Role.VIEWER).get("/v3/api-docs").body());
        return new RandomRequests(studio.address(), api, new Words(keys, MEASURES), SEED);
    }

    /** Goes on after a fault, to show the first of each kind. */
    private void note(String told, HttpResponse<String> answer) {
        try {
            check(told, answer);
        } catch (AssertionError fault) {
            String kind = answer.statusCode() + " to " + answer.request().method();
            faults.putIfAbsent(kind + (faults.size() > MOST_FAULTS ? "" : " " + place(answer)), fault.getMessage());
        }
    }

    private static String place(HttpResponse<String> answer) {
        return answer.request().uri().getPath().replaceAll("[^a-z/.]+", "*");
    }

    private static void check(String told, HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(told + answer.body()).isLessThan(500);
        if (answer.statusCode() >= 400) {
            String type = answer.headers().firstValue("Content-Type").orElse("none");
            assertThat(type).as(told + "\n" + answer.body()).startsWith("application/problem+json");
            JsonNode problem = JSON.readTree(answer.body());
            assertThat(problem.path("status").asInt(0)).as(told).isEqualTo(answer.statusCode());
            assertThat(problem.path("detail").asString("")).as(told).isNotBlank();
            assertThat(AnswerChecks.inside(answer.body()))
                    .as(told + "\n" + answer.body())
                    .isEmpty();
        }
    }

    /** A request may well have hit upon the very lead who asks, who is then no lead any more. */
    private void renewIfDismissed(HttpResponse<String> answer) {
        boolean refused = answer.statusCode() == 401 || answer.statusCode() == 403;
        if (refused
                && answer.request()
                        .headers()
                        .firstValue("Authorization")
                        .orElse("")
                        .endsWith(token)) {
            takeOnLead();
        }
    }

    private void takeOnLead() {
        SignedIn lead = studio.add("hostile-" + leads++ + "@studio.example", "Hostile lead", Role.LEAD);
        token = desk.issue(lead, "requests").secret();
    }
}

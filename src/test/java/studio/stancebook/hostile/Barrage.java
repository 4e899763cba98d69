package studio.stancebook.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import studio.stancebook.hostile.RandomRequests.Made;
import studio.stancebook.rights.AnswerChecks;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Sends random requests made from the description of the API: whatever comes, the answer is an answer or a refusal, and
 * tells nothing of the inside. {@code -Dstancebook.requests=100000} sends more, {@code -Dstancebook.seed=7} others.
 */
public final class Barrage {

    /** Segments that have to be there, with some packages in each. */
    public static final List<String> SEGMENTS = List.of("hostile-a", "hostile-b");

    /** Packages in each of them. */
    public static final int PACKAGES = 6;

    private static final long SEED = Long.getLong("stancebook.seed", 20_261_125L);
    private static final List<String> MEASURES =
            List.of("wheelbase-in-wheels", "height-in-wheels", "screen-aim-in-wheels", "wheels-spanned");
    private static final int MOST_FAULTS = 20;
    private static final JsonMapper JSON = new JsonMapper();

    private final HttpClient client = HttpClient.newHttpClient();
    private final Map<Integer, Integer> statuses = new TreeMap<>();
    private final Map<String, String> faults = new TreeMap<>();
    private final RandomRequests requests;
    private final Supplier<String> leads;
    private String token;
    private int hungUp;

    /**
     * @param description of the API, as the server gives it
     * @param leads gives the token of a lead whom no request has hit yet
     */
    public Barrage(String address, String description, Supplier<String> leads) {
        this.requests =
                new RandomRequests(address, new ApiDescription(description), new Words(SEGMENTS, MEASURES), SEED);
        this.leads = leads;
        this.token = leads.get();
    }

    /** How many to send: what the property says, or as many as usual. */
    public static int number(int usual) {
        return Integer.getInteger("stancebook.requests", usual);
    }

    /** Sends so many, and fails with the first fault of each kind. */
    public void send(int number) throws IOException, InterruptedException {
        for (int i = 0; i < number; i++) {
            Made made = requests.request(i, token);
            HttpResponse<String> answer = answer(made.request());
            statuses.merge(answer.statusCode(), 1, Integer::sum);
            note(made.told(), answer);
            renewIfDismissed(answer);
        }
        System.out.println(number + " requests, seed " + SEED + ", answers by status: " + statuses);

        assertThat(faults).isEmpty();
        assertThat(hungUp).as("requests that met a closed connection").isLessThanOrEqualTo(1 + number / 1_000);
        assertThat(requests.calls()).hasSizeGreaterThan(40);
        assertThat(statuses)
                .as("some are right, and some are wrong in every way")
                .containsKeys(200, 201, 400, 404, 422);
    }

    /** A server may close a kept connection at any moment, and whoever sends then sends again (RFC 9112, section 9.3.1). */
    private HttpResponse<String> answer(HttpRequest request) throws IOException, InterruptedException {
        try {
            return client.send(request, BodyHandlers.ofString());
        } catch (IOException closedMeanwhile) {
            hungUp++;
            return client.send(request, BodyHandlers.ofString());
        }
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
        String sent = answer.request().headers().firstValue("Authorization").orElse("");
        if (refused && sent.endsWith(token)) {
            token = leads.get();
        }
    }
}

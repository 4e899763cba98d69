package studio.stancebook.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.client.EntityExchangeResult;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.limit.Bulkhead;

/** Exports while others export: some at once, the rest asked to come again, and pages answer meanwhile. */
@StudioTest
class BusyExportsTest {

    private static final String EXPORT = "/api/v1/packages/export";

    @Autowired
    StudioClients studio;

    @Autowired
    Bulkhead bulkhead;

    private final List<Bulkhead.Place> held = new ArrayList<>();

    /** All places taken by two people who are not here. */
    private void takeAll() {
        for (long person : new long[] {-1, -1, -2, -2}) {
            held.add(bulkhead.take(person));
        }
    }

    @AfterEach
    void giveBack() {
        held.forEach(Bulkhead.Place::close);
    }

    private SignedIn somebody(Role role) {
        return studio.add(UUID.randomUUID() + "@studio.example", "Somebody", role);
    }

    private EntityExchangeResult<byte[]> get(SignedIn who, String uri) {
        return studio.withToken(studio.token(who))
                .get()
                .uri(uri)
                .exchange()
                .expectBody(byte[].class)
                .returnResult();
    }

    @ParameterizedTest
    @ValueSource(strings = {EXPORT, "/api/v1/activity/export", "/api/v1/underlays.png"})
    void areAskedToComeAgainWhileAllPlacesAreTaken(String uri) {
        SignedIn lead = somebody(Role.LEAD);
        takeAll();

        EntityExchangeResult<byte[]> refused = get(lead, uri);

        assertThat(refused.getStatus().value()).isEqualTo(429);
        assertThat(refused.getResponseHeaders().getFirst("Retry-After")).isEqualTo("30");
        assertThat(new String(Objects.requireNonNull(refused.getResponseBody()), StandardCharsets.UTF_8))
                .contains("busy with other exports");
    }

    @Test
    void tellSoOnAPageAndPagesGoOn() {
        StudioBrowser browser = studio.browser(Role.DESIGNER);
        takeAll();

        HttpResponse<String> refused = browser.get("/bring-in/take-out?format=csv");

        assertThat(refused.statusCode()).isEqualTo(429);
        assertThat(refused.headers().firstValue("Retry-After")).contains("30");
        assertThat(refused.body()).contains("The server is busy with other exports. Try again in a minute.");
        assertThat(browser.get("/catalogue").statusCode()).isEqualTo(200);
        assertThat(get(somebody(Role.LEARNER), "/api/v1/packages").getStatus().value())
                .isEqualTo(200);
    }

    @Test
    void ofOnePersonLeavePlacesForOthers() {
        SignedIn greedy = somebody(Role.DESIGNER);
        held.add(bulkhead.take(greedy.personId()));
        held.add(bulkhead.take(greedy.personId()));

        assertThat(get(greedy, EXPORT).getStatus().value()).isEqualTo(429);
        assertThat(get(somebody(Role.DESIGNER), EXPORT).getStatus().value()).isEqualTo(200);
    }

    @Test
    void inParallelAreServedOrRefusedAndLeaveNoPlaceTaken() throws Exception {
        SignedIn lead = somebody(Role.LEAD);
        List<Callable<EntityExchangeResult<byte[]>>> all = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            all.add(() -> get(lead, EXPORT + "?format=xlsx"));
        }
        ExecutorService crowd = Executors.newFixedThreadPool(24);
        for (Future<EntityExchangeResult<byte[]>> answer : crowd.invokeAll(all)) {
            int status = answer.get().getStatus().value();
            assertThat(status).isIn(200, 429);
            assertThat(answer.get().getResponseHeaders().containsHeader("Retry-After"))
                    .isEqualTo(status == 429);
        }
        crowd.shutdown();

        assertThat(get(lead, EXPORT).getStatus().value()).isEqualTo(200);
        takeAll();
    }
}

package studio.stancebook.proposal;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.springframework.http.HttpMethod;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;

/** Who sees and changes whose proposals. */
abstract class ProposalRightsTest extends ProposalClient {
    @ParameterizedTest
    @EnumSource(mode = Mode.EXCLUDE, names = "LEARNER")
    void areSeenByEverybodyButLearners(Role role) {
        Made made = make(Role.DESIGNER, 2800);

        get(role, made.path()).expectStatus().isOk();
        get(role, PROPOSALS + "?segment=" + segment)
                .expectBody()
                .jsonPath("$.total")
                .isEqualTo(1);
    }

    @Test
    void areHiddenFromALearnerWhoDoesNotOwnThem() {
        Made others = make(Role.DESIGNER, 2800);
        Made own = make(Role.LEARNER, 2800);
        Map<String, ?> revision = Map.of("dimensions", dimensions(2310));

        for (String part : new String[] {"", "/revisions", "/revisions/1", "/assessment"}) {
            get(Role.LEARNER, others.path() + part).expectStatus().isNotFound();
            get(Role.LEARNER, own.path() + part).expectStatus().isOk();
        }
        send(Role.LEARNER, HttpMethod.POST, others.path() + "/revisions", others.tag(), revision)
                .expectStatus()
                .isNotFound();
        send(Role.LEARNER, HttpMethod.PUT, others.path(), others.tag(), body(2310))
                .expectStatus()
                .isNotFound();
        send(Role.LEARNER, HttpMethod.POST, own.path() + "/revisions", own.tag(), revision)
                .expectStatus()
                .isCreated();
        SignedIn designer = studio.person(Role.DESIGNER);
        get(Role.LEARNER, PROPOSALS + "?segment=" + segment)
                .expectBody()
                .jsonPath("$.total")
                .isEqualTo(1);
        get(Role.LEARNER, PROPOSALS + "?owner=" + designer.personId())
                .expectBody()
                .jsonPath("$.total")
                .isEqualTo(0);
    }

    @ParameterizedTest
    @EnumSource(names = {"DESIGNER", "TUTOR"})
    void areChangedByTheirOwnersOnly(Role role) {
        Made lead = make(Role.LEAD, 2800);
        Made own = make(role, 2800);
        Map<String, ?> revision = Map.of("dimensions", dimensions(2310));
        Map<String, ?> change = Map.of("name", "Mine", "segment", segment, "stage", "shelved");

        send(role, HttpMethod.POST, lead.path() + "/revisions", lead.tag(), revision)
                .expectStatus()
                .isForbidden();
        send(role, HttpMethod.PUT, lead.path(), lead.tag(), change)
                .expectStatus()
                .isForbidden();
        send(role, HttpMethod.PUT, own.path(), own.tag(), change).expectStatus().isOk();
    }

    @Test
    void areAllChangedByTheLeadWhoAloneAgrees() {
        Made made = make(Role.DESIGNER, 2800);
        Map<String, ?> agreed = Map.of("name", "Tern", "segment", segment, "stage", "agreed");

        send(Role.DESIGNER, HttpMethod.PUT, made.path(), made.tag(), agreed)
                .expectStatus()
                .isForbidden();
        String tag = send(Role.LEAD, HttpMethod.PUT, made.path(), made.tag(), agreed)
                .expectStatus()
                .isOk()
                .expectBody()
                .returnResult()
                .getResponseHeaders()
                .getETag();
        send(
                        Role.DESIGNER,
                        HttpMethod.PUT,
                        made.path(),
                        tag,
                        Map.of("name", "Tern", "segment", segment, "stage", "draft"))
                .expectStatus()
                .isForbidden();
    }

    @Test
    void areNeitherMadeNorChangedByViewers() {
        Made made = make(Role.DESIGNER, 2800);

        send(Role.VIEWER, HttpMethod.POST, PROPOSALS, null, body(2800))
                .expectStatus()
                .isForbidden();
        send(Role.VIEWER, HttpMethod.POST, made.path() + "/revisions", made.tag(), body(2800))
                .expectStatus()
                .isForbidden();
    }
}

package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.EnumSource.Mode;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.domain.Limit;
import org.springframework.data.domain.Pageable;
import org.springframework.http.HttpMethod;
import studio.stancebook.access.OwnerScope;
import studio.stancebook.access.Permission;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.proposal.internal.StoredProposal;
import studio.stancebook.proposal.internal.StoredProposals;
import studio.stancebook.proposal.internal.StoredRevisions;

/** Who sees and changes whose proposals. */
abstract class ProposalRightsTest extends ProposalClient {

    private static final Limit ALL = Limit.of(100_000);

    @Autowired
    StoredProposals proposals;

    @Autowired
    StoredRevisions revisions;

    /** The decision about one and the condition of a query for many say the same, for whatever the policy gives anybody. */
    @Test
    void areFoundByEveryQueryAsTheDecisionSays() {
        Map<Long, Long> owners = new TreeMap<>();
        for (Role role : List.of(Role.LEAD, Role.DESIGNER, Role.TUTOR, Role.LEARNER)) {
            owners.put(idOf(make(role, 2800)), studio.person(role).personId());
        }
        List<OwnerScope> scopes = scopes();

        assertThat(scopes).hasSizeGreaterThan(4).allSatisfy(scope -> {
            List<Long> included = owners.entrySet().stream()
                    .filter(made -> scope.includes(made.getValue()))
                    .map(Map.Entry::getKey)
                    .toList();
            assertThat(foundIn(scope, owners.keySet()))
                    .hasSize(5)
                    .allSatisfy((query, found) -> assertThat(found).containsExactlyInAnyOrderElementsOf(included));
            assertThat(proposals.owners(scope))
                    .allMatch(scope::includes)
                    .containsAll(
                            owners.values().stream().filter(scope::includes).toList());
        });
    }

    /** Whatever a role gives, and two owners, of which a policy may speak tomorrow. */
    private List<OwnerScope> scopes() {
        Set<OwnerScope> scopes = new LinkedHashSet<>();
        for (Role role : Role.values()) {
            scopes.add(studio.person(role).scope(Permission.SEE_PROPOSALS));
            scopes.add(studio.person(role).scope(Permission.CHANGE_PROPOSALS));
        }
        scopes.add(new OwnerScope(
                false,
                Set.of(
                        studio.person(Role.TUTOR).personId(),
                        studio.person(Role.LEARNER).personId())));
        return List.copyOf(scopes);
    }

    /** What each query finds of some proposals, by its name. */
    private Map<String, List<Long>> foundIn(OwnerScope scope, Set<Long> asked) {
        long segmentId = segments.named(segment).id();
        Map<String, Stream<Long>> found = Map.of(
                "find",
                proposals.find("", segmentId, null, null, scope, Pageable.ofSize(100)).stream()
                        .map(StoredProposal::id),
                "open",
                proposals.open(scope, ALL).stream().map(StoredProposal::id),
                "lastChanged",
                proposals.lastChanged(scope, ALL).stream().map(StoredProposal::id),
                "judgedIn",
                revisions.judgedIn(segmentId, scope, ALL).stream().map(StoredRevisions.Judged::getId),
                "newest",
                revisions.newest(asked, scope).stream().map(StoredRevisions.Newest::getProposalId));
        return found.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        query -> query.getValue().filter(asked::contains).toList()));
    }

    private static long idOf(Made made) {
        return Long.parseLong(made.path().replaceAll(".*/", ""));
    }

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

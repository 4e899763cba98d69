package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PersonChange;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.PackageIssue;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.statistics.BandMethod;

/** What somebody did is shown under the name that they have now, and never under that of somebody else. */
abstract class NamesOfNowTest {

    private static final String MEASURE = "wheelbase-in-wheels";

    @Autowired
    StudioClients studio;

    @Autowired
    PersonService people;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Bands bands;

    @Autowired
    Proposals proposals;

    private String before = "";
    private String now = "";

    @BeforeEach
    void chooseNames() {
        String unique = UUID.randomUUID().toString().substring(0, 8);
        before = "Robin " + unique;
        now = "Wren " + unique;
    }

    private SignedIn add(String name) {
        return studio.add(UUID.randomUUID() + "@studio.example", name, Role.LEAD);
    }

    private void become(SignedIn who, String name, boolean active) {
        ExpectedVersion version = new ExpectedVersion(people.get(who.personId()).version());
        people.change(who.personId(), version, new PersonChange(name, who.role().key(), active));
    }

    /** What somebody did, in a segment of its own. */
    private record Work(String segment, long packageId, long proposalId) {

        List<String> pages() {
            return List.of(
                    "/packages/" + packageId,
                    "/segments/" + segment,
                    "/segments/" + segment + "/bands/" + MEASURE,
                    "/proposals/" + proposalId,
                    "/");
        }

        List<String> answers() {
            return List.of(
                    "/api/v1/packages/" + packageId,
                    "/api/v1/packages?segment=" + segment,
                    "/api/v1/segments/" + segment + "/bands/" + MEASURE,
                    "/api/v1/segments/" + segment + "/bands/" + MEASURE + "/versions",
                    "/api/v1/proposals/" + proposalId,
                    "/api/v1/proposals?segment=" + segment,
                    "/api/v1/proposals/" + proposalId + "/revisions",
                    "/api/v1/proposals/" + proposalId + "/revisions/1");
        }
    }

    private Work workOf(SignedIn who) {
        Author author = who.author();
        String segment = Invented.key("names");
        segments.create(segment, "Segment of a test", "");
        catalogue.add(Invented.draft(segment, "Alike", 2800), author);
        PackageView alike = catalogue.add(Invented.draft(segment, "Alike again", 2800), author);
        catalogue.settle(alike.id(), alike.openQueries().get(0).id(), "Looked at both", author);
        catalogue.setAside(alike.id(), "Measured with a load", author);
        catalogue.setValueAside(alike.id(), "overallHeight", "Roof rails counted", author);
        BandSetting rule = BandSetting.of(new BandMethod.Rule(3, 4.5, "Of a test"));
        bands.set(segment, MEASURE, rule, "Of a test", null, author);
        ProposalDraft draft =
                new ProposalDraft("Tern", segment, Invented.dimensions(2800).build(), "First sketch");
        return new Work(segment, alike.id(), proposals.make(draft, who).id());
    }

    private void requireShown(Work work, String shown, String gone) {
        StudioBrowser viewer = studio.browser(Role.VIEWER);
        for (String page : work.pages()) {
            assertThat(viewer.get(page).body()).as(page).contains(shown).doesNotContain(gone);
        }
        for (String answer : work.answers()) {
            assertThat(answer(answer)).as(answer).contains(shown).doesNotContain(gone);
        }
    }

    private String answer(String address) {
        return new String(studio.api(Role.VIEWER)
                .get()
                .uri(address)
                .exchange()
                .expectStatus()
                .isOk()
                .expectBody()
                .returnResult()
                .getResponseBodyContent());
    }

    @Test
    void areThoseThatPeopleWereGivenLast() {
        SignedIn who = add(before);
        Work work = workOf(who);
        requireShown(work, before, now);

        become(who, now, true);

        requireShown(work, now, before);
        PackageView benchmark = catalogue.get(work.packageId());
        assertThat(benchmark.createdBy()).isEqualTo(now);
        assertThat(benchmark.changedBy()).isEqualTo(now);
        assertThat(benchmark.setAside())
                .satisfies(apart -> assertThat(apart.by()).isEqualTo(now));
        assertThat(benchmark.valuesSetAside().get("overallHeight").by()).isEqualTo(now);
        assertThat(benchmark.dimensions().recorded().values())
                .allMatch(mark -> mark.by().equals(now));
        assertThat(benchmark.queries())
                .extracting(PackageIssue::settlement)
                .allSatisfy(settled -> assertThat(settled.by()).isEqualTo(now));
        assertThat(bands.get(work.segment(), MEASURE).by()).isEqualTo(now);
        ProposalView proposal = proposals.get(work.proposalId(), who);
        assertThat(proposal.changedBy()).isEqualTo(now);
        assertThat(proposal.newest().author()).isEqualTo(now);
    }

    @Test
    void areThoseOfWhoChangedSomethingLast() {
        SignedIn first = add(before);
        SignedIn second = add(now);
        Work work = workOf(first);
        PackageView benchmark = catalogue.get(work.packageId());

        PackageView changed =
                catalogue.takeBack(benchmark.id(), new ExpectedVersion(benchmark.version()), second.author());

        assertThat(changed.createdBy()).isEqualTo(before);
        assertThat(changed.changedBy()).isEqualTo(now);
        assertThat(catalogue.get(work.packageId()).changedBy()).isEqualTo(now);
    }

    @Test
    void stayWhenPeopleAreDeactivated() {
        SignedIn who = add(before);
        Work work = workOf(who);

        become(who, before, false);

        requireShown(work, before, now);
    }

    @Test
    void belongToOneOfTwoWhoWereCalledTheSame() {
        SignedIn renamed = add(before);
        SignedIn namesake = add(before);
        Work ofRenamed = workOf(renamed);
        Work ofNamesake = workOf(namesake);

        become(renamed, now, true);

        assertThat(answer("/api/v1/packages/" + ofRenamed.packageId()))
                .contains(now)
                .doesNotContain(before);
        assertThat(answer("/api/v1/packages/" + ofNamesake.packageId()))
                .contains(before)
                .doesNotContain(now);
        assertThat(bands.get(ofRenamed.segment(), MEASURE).by()).isEqualTo(now);
        assertThat(bands.get(ofNamesake.segment(), MEASURE).by()).isEqualTo(before);
        assertThat(proposals.get(ofRenamed.proposalId(), renamed).newest().author())
                .isEqualTo(now);
        assertThat(proposals.get(ofNamesake.proposalId(), renamed).newest().author())
                .isEqualTo(before);
    }

    @Test
    void areThoseThatWereKeptWhereNobodyIsKnownById() {
        SignedIn namesake = add(before);
        String segment = Invented.key("names");
        segments.create(segment, "Segment of a test", "");
        long id = catalogue
                .add(Invented.draft(segment, "Old", 2800), new Author(null, before))
                .id();

        become(namesake, now, true);

        assertThat(answer("/api/v1/packages/" + id)).contains(before).doesNotContain(now);
    }
}

package studio.stancebook.activity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.data.domain.PageRequest;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.context.SecurityContextHolder;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.IssuedToken;
import studio.stancebook.account.internal.NewPerson;
import studio.stancebook.account.internal.NewToken;
import studio.stancebook.account.internal.PersonChange;
import studio.stancebook.account.internal.PersonEntry;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.account.internal.TokenService;
import studio.stancebook.band.Band;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.catalogue.SegmentView;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Reading;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.measure.StudioRatio;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.proposal.ProposalChange;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.Stage;
import studio.stancebook.statistics.BandMethod;

/** Each kind of write leaves its line, under the name of who is signed in. */
abstract class ActivityEventsTest {

    private static final String MEASURE = "wheelbase-in-wheels";

    @Autowired
    ActivityRecord activity;

    @Autowired
    StudioClients studio;

    @Autowired
    PersonService people;

    @Autowired
    TokenService tokens;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Bands bands;

    @Autowired
    Proposals proposals;

    @Autowired
    StudioMeasures measures;

    private SignedIn lead;
    private String segment = "";

    @BeforeEach
    void signIn() {
        lead = studio.person(Role.LEAD);
        SecurityContextHolder.getContext()
                .setAuthentication(new UsernamePasswordAuthenticationToken(lead, null, List.of()));
        segment = Invented.key("deeds");
        segments.create(segment, "Deeds", "");
    }

    @AfterEach
    void signOut() {
        SecurityContextHolder.clearContext();
    }

    /** The lines about a thing, oldest first. */
    private List<ActivityLine> of(String kind, Object subject) {
        ActivityFilter filter = new ActivityFilter(lead.personId(), kind, String.valueOf(subject), null, null);
        List<ActivityLine> lines = activity.list(filter, PageRequest.of(0, 50)).getContent();
        assertThat(lines).allMatch(line -> line.by().equals(lead.name()));
        return lines.stream().sorted((a, b) -> Long.compare(a.line(), b.line())).toList();
    }

    private static List<String> actions(List<ActivityLine> lines) {
        return lines.stream().map(ActivityLine::action).toList();
    }

    private static ExpectedVersion at(long version) {
        return new ExpectedVersion(version);
    }

    @Test
    void areToldOfPeopleButNeverTheirPasswords() {
        String email = Invented.key("person") + "@studio.example";
        PersonEntry added = people.add(new NewPerson(email, "Ada Test", "designer", "the first password"));
        people.change(added.id(), at(added.version()), new PersonChange("Ada Test", "viewer", false));
        people.resetPassword(added.id(), "the second password");
        SignedIn ada = new SignedIn(added.id(), "Ada Test", email, Role.VIEWER);
        people.changeOwnPassword(ada, "the third password");

        List<ActivityLine> lines = of("person", added.id());

        assertThat(actions(lines)).containsExactly("added", "changed", "password reset", "password changed");
        assertThat(lines.get(1).changes())
                .containsExactly(new FieldChange("role", "designer", "viewer"), new FieldChange("active", "yes", "no"));
        assertThat(lines.toString()).doesNotContain("the first", "the second", "the third", "{bcrypt}", "$2");
    }

    @Test
    void areToldOfTokensButNeverTheirSecrets() {
        IssuedToken token = tokens.issue(lead, NewToken.named("Plotter"));
        tokens.revoke(lead, token.id());

        List<ActivityLine> lines = of("token", token.id());

        assertThat(actions(lines)).containsExactly("made", "revoked");
        assertThat(lines.get(0).changes()).contains(new FieldChange("name", null, "Plotter"));
        assertThat(lines.toString()).doesNotContain(token.secret());
    }

    @Test
    void areToldOfSegments() {
        SegmentView now = segments.get(segment);
        segments.change(segment, at(now.version()), "Deeds", "About them");

        List<ActivityLine> lines = of("segment", segment);

        assertThat(actions(lines)).containsExactly("made", "changed");
        assertThat(lines.get(1).changes()).containsExactly(new FieldChange("description", null, "About them"));
    }

    @Test
    void areToldOfPackagesAndWhatCountsOfThem() {
        PackageView tern = catalogue.add(Invented.draft(segment, "Tern", 2850), new Author(null, "Lead"));
        tern = catalogue.change(
                tern.id(), at(tern.version()), Invented.draft(segment, "Gull", 2850), new Author(null, "Lead"));
        tern = catalogue.setAside(tern.id(), at(tern.version()), "Measured with a load", new Author(null, "Lead"));
        tern = catalogue.takeBack(tern.id(), at(tern.version()), new Author(null, "Lead"));
        tern = catalogue.setValueAside(
                tern.id(), at(tern.version()), "overallHeight", "Rails", new Author(null, "Lead"));
        tern = catalogue.takeValueBack(tern.id(), at(tern.version()), "overallHeight", new Author(null, "Lead"));
        catalogue.delete(tern.id(), at(tern.version()));

        List<ActivityLine> lines = of("package", tern.id());

        assertThat(actions(lines))
                .containsExactly(
                        "added",
                        "changed",
                        "set aside",
                        "taken back",
                        "value set aside",
                        "value taken back",
                        "deleted");
        assertThat(lines.get(1).changes()).containsExactly(new FieldChange("name", "Tern", "Gull"));
        assertThat(lines.get(2).changes()).containsExactly(new FieldChange("reason", null, "Measured with a load"));
        assertThat(lines.get(3).changes()).containsExactly(new FieldChange("reason", "Measured with a load", null));
        assertThat(lines.get(4).changes()).containsExactly(new FieldChange("overallHeight", null, "Rails"));
        assertThat(lines.get(5).changes()).containsExactly(new FieldChange("overallHeight", "Rails", null));
    }

    @Test
    void areToldOfAnswersToQueries() {
        PackageDraft plain = Invented.draft(segment, "Tern", 2850);
        PackageView tern = catalogue.add(
                new PackageDraft(
                        plain.name(), segment, 2020, Origin.DRAWING, plain.dimensions(), List.of("Which tyres?")),
                new Author(null, "Lead"));
        long query = tern.queries().get(0).id();
        catalogue.settle(tern.id(), query, "The large ones.", new Author(null, "Lead"));
        catalogue.reopen(tern.id(), query);

        List<ActivityLine> lines = of("package", tern.id());

        assertThat(actions(lines)).containsExactly("added", "query settled", "query reopened");
        assertThat(lines.get(1).changes())
                .containsExactly(new FieldChange("query", "Which tyres?", "Which tyres? The large ones."));
    }

    @Test
    void areToldOfBands() {
        BandSetting first = BandSetting.of(new BandMethod.Rule(3.4, 3.7, "Practice"));
        BandSetting second = BandSetting.of(new BandMethod.Rule(3.5, 3.7, "Practice"));
        bands.set(segment, MEASURE, first, "Practice", null, new Author(null, "Lead"));
        Band set = bands.set(segment, MEASURE, second, "Practice", at(1), new Author(null, "Lead"));
        bands.withdraw(segment, MEASURE, "Not needed", at(set.version()), new Author(null, "Lead"));

        List<ActivityLine> lines = of("band", segment + "/" + MEASURE);

        assertThat(actions(lines)).containsExactly("set", "set", "withdrawn");
        assertThat(lines.get(1).changes())
                .containsExactly(new FieldChange("version", "1", "2"), new FieldChange("lower", "3.4", "3.5"));
        assertThat(lines.get(2).changes())
                .contains(new FieldChange("upper", "3.7", null), new FieldChange("reason", "Practice", "Not needed"));
    }

    @Test
    void areToldOfProposals() {
        ProposalView made = proposals.make(
                new ProposalDraft("Tern", segment, Invented.dimensions(2850).build(), ""), lead);
        ProposalView changed = proposals.change(
                made.id(), at(made.version()), new ProposalChange("Tern", segment, Stage.FOR_REVIEW), lead);
        proposals.revise(
                made.id(), at(changed.version()), Invented.dimensions(2870).build(), "Longer", lead);

        List<ActivityLine> lines = of("proposal", made.id());

        assertThat(actions(lines)).containsExactly("made", "changed", "revised");
        assertThat(lines.get(1).changes()).containsExactly(new FieldChange("stage", "draft", "for-review"));
        assertThat(lines.get(2).changes())
                .containsExactly(
                        new FieldChange("revision", "1", "2"),
                        new FieldChange("note", null, "Longer"),
                        new FieldChange("wheelbase", "2850", "2870"));
    }

    @Test
    void areToldOfStudioRatios() {
        String key = Invented.key("deeds-ratio");
        measures.add(
                new StudioRatio(key, "Nose in wheelbases", List.of(Reading.FRONT_OVERHANG), List.of(Reading.WHEELBASE)),
                new Author(null, "Lead"));
        measures.remove(key);

        List<ActivityLine> lines = of("studio ratio", key);

        assertThat(actions(lines)).containsExactly("added", "removed");
        Map<String, String> gone = lines.get(1).changes().stream()
                .collect(Collectors.toMap(FieldChange::field, change -> String.valueOf(change.from())));
        assertThat(gone).containsEntry("definition", "Front overhang over Wheelbase.");
    }
}

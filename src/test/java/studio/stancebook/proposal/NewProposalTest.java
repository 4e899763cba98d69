package studio.stancebook.proposal;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.InventedFleet;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Dimension;

/** What a new proposal starts from, and the form that is filled with it. */
@StudioTest
class NewProposalTest {

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    @Autowired
    Proposals proposals;

    private String segment = "";
    private StudioBrowser designer;

    @BeforeEach
    void makeASegment() {
        segment = Invented.key("start");
        segments.create(segment, "Saloons to start from", "Invented saloons.");
        catalogue.addAll(InventedFleet.of(segment), new Author(null, "Tests"));
        designer = studio.browser(Role.DESIGNER);
    }

    private HttpResponse<String> starting(String with) {
        return designer.get("/proposals/new?from=segment&segment=" + segment + with);
    }

    @Test
    void showsWhatIsTypicalOfEachSegmentAsAPicture() {
        assertThat(designer.get("/proposals/new").body())
                .contains("Typical of a segment", "Saloons to start from", "side-view-thumbnail");
    }

    @Test
    void drawsAndJudgesWhatIsTypicalOnATyreAndAWheelbase() {
        HttpResponse<String> form = starting("&tyre=225/50R17&wheelbase=2800");

        assertThat(form.statusCode()).isEqualTo(200);
        assertThat(form.body())
                .contains("value=\"Saloons to start from on 225/50R17\"", "value=\"2800\"", "value=\"225/50R17\"")
                .contains("As started, not saved.", "L101 wheelbase 2800", "data-live-handles");
    }

    @Test
    void isMadeByPressingSaveInThatForm() {
        String form = starting("&tyre=225/50R17").body();
        Map<String, String> filled = new HashMap<>(FormFields.of(form));

        HttpResponse<String> made = designer.submit("/proposals/new", "/proposals", filled);

        assertThat(made.statusCode()).isEqualTo(302);
        String page = made.headers().firstValue("Location").orElseThrow();
        assertThat(designer.get(page.substring(page.indexOf("/proposals"))).body())
                .contains("Saloons to start from on");
    }

    @Test
    void refusesATyreAndAWheelbaseThatCannotBe() {
        assertThat(starting("&tyre=wide"))
                .satisfies(answer -> assertThat(answer.statusCode()).isEqualTo(422))
                .satisfies(answer -> assertThat(answer.body()).contains("value=\"wide\"", "f-tyre-error"));
        assertThat(starting("&wheelbase=28").body()).contains("A wheelbase is a length of 1000 to 6000 mm");
        assertThat(designer.get("/proposals/new?from=segment&segment=none").body())
                .contains("Choose a segment.");
        assertThat(designer.get("/proposals/new?from=elsewhere").statusCode()).isEqualTo(422);
    }

    @Test
    void saysThatNothingIsTypicalOfASegmentWithoutPackages() {
        String empty = Invented.key("empty");
        segments.create(empty, "Nothing yet", "");
        assertThat(designer.get("/proposals/new?from=segment&segment=" + empty).body())
                .contains("Nothing yet has no package with a tyre yet");
    }

    @Test
    void startsBetweenTwoSegments() {
        String other = Invented.key("other");
        segments.create(other, "Others to start from", "");
        catalogue.addAll(InventedFleet.of(other), new Author(null, "Tests"));
        String between = "/proposals/new?from=between&segment=" + segment + "&other=";
        assertThat(designer.get(between + other + "&share=25&tyre=225/50R17").body())
                .contains("Between Saloons to start from and Others to start from");
        assertThat(designer.get(between + other + "&share=101").body()).contains("a whole number from 0 to 100");
        assertThat(designer.get(between + segment + "&share=50").body()).contains("two different segments");
    }

    @Test
    void startsFromABenchmarkThatWasFoundByName() {
        String name = InventedFleet.of(segment).get(3).name();
        String found =
                designer.get("/proposals/new?q=" + name.replace(" ", "+")).body();
        String link = found.replaceAll("(?s).*?(/proposals/new\\?from=package&amp;of=\\d+).*", "$1")
                .replace("&amp;", "&");
        assertThat(designer.get(link).body()).contains("value=\"After ").contains("As started, not saved.");
    }

    @Test
    void copiesARevisionAndRevisesFromAnEarlierOne() {
        ProposalView proposal = proposals.make(
                new ProposalDraft(
                        "Tern", segment, InventedFleet.of(segment).get(3).dimensions(), ""),
                studio.person(Role.DESIGNER));
        var first = proposal.newest().dimensions();
        double height = first.scalar(Dimension.OVERALL_HEIGHT).orElseThrow();
        proposals.revise(
                proposal.id(),
                new studio.stancebook.problem.ExpectedVersion(proposal.version()),
                first.toBuilder().set(Dimension.OVERALL_HEIGHT, height + 7).build(),
                "",
                studio.person(Role.DESIGNER));
        String as = "value=\"" + (long) height + "\"";

        assertThat(designer.get("/proposals/new?from=proposal&of=" + proposal.id() + "&revision=1")
                        .body())
                .contains("value=\"Tern, copy\"", as);
        assertThat(designer.get("/proposals/" + proposal.id() + "/revise?revision=1")
                        .body())
                .contains("Filled with revision 1", as);
        assertThat(designer.get("/proposals/" + proposal.id() + "?revision=1").body())
                .contains("Revise from this one");
    }

    @Test
    void choosesNoSegmentBeforehandAndStartsFromNothingIfAsked() {
        String form = designer.get("/proposals/new?from=nothing").body();
        assertThat(form)
                .contains("Type a wheelbase and a tyre, and the drawing begins.")
                .contains("<option value=\"\" selected=\"selected\">Choose one</option>");
    }

    @Test
    void drawsWhatIsTypedBeforeASegmentIsChosen() {
        HttpResponse<String> drawn = designer.submit(
                "/account", "/proposals/new/preview", Map.of("dimensions.wheelbase", "2800", "segment", ""));
        assertThat(drawn.body()).contains("<svg", "Choose a segment to see the verdicts.");
    }

    /** Enter in a field of a browser without script sends the first button of the form. */
    @Test
    void makesNoProposalWhereTheFormIsOnlyToBeDrawn() {
        long before = proposals
                .list(
                        ProposalFilter.all(),
                        org.springframework.data.domain.Pageable.ofSize(1),
                        studio.person(Role.LEAD))
                .getTotalElements();
        HttpResponse<String> drawn = designer.submit(
                "/account",
                "/proposals",
                Map.of("draw", "true", "name", "Half", "segment", segment, "dimensions.wheelbase", "2800"));
        assertThat(drawn.statusCode()).isEqualTo(200);
        assertThat(drawn.body()).contains("value=\"Half\"", "L101 wheelbase 2800");
        assertThat(proposals
                        .list(
                                ProposalFilter.all(),
                                org.springframework.data.domain.Pageable.ofSize(1),
                                studio.person(Role.LEAD))
                        .getTotalElements())
                .isEqualTo(before);
    }

    @Test
    void isForThoseWhoMakeProposals() {
        assertThat(studio.browser(Role.VIEWER)
                        .get("/proposals/new?from=nothing")
                        .statusCode())
                .isEqualTo(403);
    }
}

package studio.stancebook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.InventedFleet;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Variable;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.statistics.BandMethod;

/** A lead sets a band and judges a proposal by it, in a real browser. */
@StudioTest
class ProposalJourneyIT {

    @RegisterExtension
    static final Chromium chromium = new Chromium();

    @Autowired
    StudioClients studio;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Segments segments;

    @Autowired
    Bands bands;

    @Autowired
    Proposals proposals;

    private BrowserVisit visit;

    @AfterEach
    void close() {
        visit.close();
    }

    private String saloons() {
        String segment = Invented.key("journey");
        segments.create(segment, "Saloons of the journey", "Invented saloons.");
        catalogue.addAll(InventedFleet.of(segment), new Author(null, "Lead of the tests"));
        return segment;
    }

    @Test
    void goesFromAClassToABandToAProposalThatMovesInside() {
        String segment = saloons();
        Page page = signedIn(ColorScheme.LIGHT, 1280);

        page.navigate(studio.address() + "/segments/" + segment + "/bands");
        page.getByRole(AriaRole.LINK, named("Wheelbase, centre to centre")).click();
        page.getByRole(AriaRole.LINK, named("Rule")).click();
        page.getByLabel("Lower limit").fill("4,0");
        page.getByLabel("Upper limit").fill("4.4");
        page.locator("#f-reason").fill("As the studio has drawn them");
        page.getByRole(AriaRole.BUTTON, named("Preview")).click();
        assertThat(page.locator("#set").innerText()).contains("of 12 values of the class would lie outside");
        page.getByRole(AriaRole.BUTTON, named("Set the band")).click();
        assertThat(page.getByRole(AriaRole.STATUS).innerText()).contains("The band is set: version 1.");

        page.navigate(studio.address() + "/proposals/new?from=nothing&segment=" + segment);
        page.locator("#f-name").fill("Tern");
        page.locator("#dimensions-wheelbase").fill("119.7 in");
        page.locator("#section-tyres").click();
        page.locator("#dimensions-frontTyreDiameter").fill("660");
        page.locator("#dimensions-rearTyreDiameter").fill("660");
        page.getByRole(AriaRole.BUTTON, named("Save the proposal")).click();
        assertThat(page.locator(".finding").innerText())
                .isEqualTo("One of 1 measures is outside its band; none is too close to call.");
        assertThat(page.locator("#verdicts").innerText()).contains("wheelbase \u2212137\u00a0mm");

        page.getByRole(AriaRole.LINK, named("Revise")).click();
        assertThat(page.locator("#dimensions-wheelbase").inputValue()).isEqualTo("3040.38");
        page.locator("#dimensions-wheelbase").fill("2770");
        page.locator("#f-note").fill("Shorter");
        page.getByRole(AriaRole.BUTTON, named("Save the revision")).click();
        assertThat(page.locator(".finding").innerText())
                .isEqualTo("The one measure that was judged is not outside its band; none is too close to call.");
        assertThat(page.locator("#difference").innerText()).contains("\u2212270.38 mm");
        assertThat(visit.complaints()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"LIGHT,360", "DARK,1280"})
    void meetsTheRulesOfAccessibilityInStatesThatTheDemoStudioHasNot(ColorScheme scheme, int width) {
        String segment = saloons();
        SignedIn lead = studio.person(Role.LEAD);
        bands.setWhereNone(segment, everyMeasure(), "", new Author(null, "Lead of the tests"));
        ProposalView proposal = twoRevisions(segment, lead);
        bands.set(
                segment,
                "wheels-spanned",
                BandSetting.of(new BandMethod.Rule(1, 2, "To differ")),
                "To differ",
                new ExpectedVersion(1),
                new Author(null, "Lead"));
        catalogue.add(Invented.draft(segment, "Newcomer", 3300), new Author(null, "Lead"));
        Page page = signedIn(scheme, width);

        for (String path : List.of(
                "/segments/" + segment + "/bands/wheels-spanned?method=percentile",
                "/proposals/" + proposal.id(),
                "/proposals/" + proposal.id() + "?revision=1")) {
            page.navigate(studio.address() + path);
            openAll(page);
            check(page, path);
        }
        refuseAndOvertake(page, proposal, lead);
        assertThat(visit.complaints()).isEmpty();
    }

    private static Map<String, BandSetting> everyMeasure() {
        Map<String, BandSetting> settings = new LinkedHashMap<>();
        MeasureRegistry.builtIn()
                .all()
                .forEach(measure -> settings.put(measure.key(), BandSetting.of(new BandMethod.Robust(1))));
        return settings;
    }

    private ProposalView twoRevisions(String segment, SignedIn lead) {
        PackageDraft like = InventedFleet.of(segment).get(3);
        DimensionSet first = like.dimensions();
        DimensionSet second = first.moved(
                Variable.of(Dimension.OVERALL_HEIGHT),
                first.scalar(Dimension.OVERALL_HEIGHT).orElse(1500) * 0.1);
        ProposalView made = proposals.make(new ProposalDraft("Tern", segment, first, "First"), lead);
        return proposals.revise(
                made.id(),
                new ExpectedVersion(made.version()),
                second.toBuilder().without("roofApex").build(),
                "Taller",
                lead);
    }

    /** The pages that a refused form and a form that came too late lead to. */
    private void refuseAndOvertake(Page page, ProposalView proposal, SignedIn lead) {
        String revise = studio.address() + "/proposals/" + proposal.id() + "/revise";
        page.navigate(revise);
        page.locator("#dimensions-wheelbase").fill("long");
        page.getByRole(AriaRole.BUTTON, named("Save the revision")).click();
        page.getByRole(AriaRole.ALERT).waitFor();
        check(page, "refused revision");
        page.navigate(revise);
        proposals.revise(
                proposal.id(),
                new ExpectedVersion(proposal.version()),
                proposal.newest().dimensions().moved(Variable.of(Dimension.OVERALL_WIDTH), 10),
                "Meanwhile",
                lead);
        page.locator("#f-note").fill("Too late");
        page.getByRole(AriaRole.BUTTON, named("Save the revision")).click();
        page.getByText("saved before you did").first().waitFor();
        check(page, "overtaken revision");
    }

    private static void openAll(Page page) {
        page.evaluate("document.querySelectorAll('details').forEach(part => part.open = true)");
    }

    private void check(Page page, String path) {
        visit.meetsTheRules(path);
    }

    private Page signedIn(ColorScheme scheme, int width) {
        visit = BrowserVisit.of(studio.person(Role.LEAD), chromium, studio, scheme, width);
        return visit.page();
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name).setExact(true);
    }
}

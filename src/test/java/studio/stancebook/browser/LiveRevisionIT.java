package studio.stancebook.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ColorScheme;
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
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.InventedFleet;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.demo.InventedCatalogue;
import studio.stancebook.demo.InventedVehicle;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.statistics.BandMethod;

/** A designer types dimensions and sees drawing and verdicts follow before anything is saved. */
@StudioTest
class LiveRevisionIT {

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
    void leave() {
        visit.close();
        assertThat(visit.complaints()).isEmpty();
    }

    /** The wheelbase of an invented saloon and a band around it. */
    private ProposalView saloon() {
        String segment = Invented.key("live");
        segments.create(segment, "Saloons that are typed", "Invented saloons.");
        catalogue.addAll(InventedFleet.of(segment), new Author(null, "Lead of the tests"));
        bands.set(
                segment,
                "wheelbase-in-wheels",
                BandSetting.of(new BandMethod.Rule(3, 5, "Wide, for a test")),
                "Wide, for a test",
                null,
                new Author(null, "Lead of the tests"));
        return proposals.make(
                new ProposalDraft(
                        "Tern", segment, InventedFleet.of(segment).get(3).dimensions(), ""),
                studio.person(Role.DESIGNER));
    }

    private Page revising(ProposalView proposal, ColorScheme scheme, int width) {
        visit = BrowserVisit.of(studio.person(Role.DESIGNER), chromium, studio, scheme, width);
        return visit.open("/proposals/" + proposal.id() + "/revise");
    }

    private static void type(Page page, String input, String text) {
        page.locator(input).fill(text);
        page.locator(input).press("Tab");
    }

    private static String drawing(Page page) {
        return page.locator(".side-view__sheet--wide").innerHTML();
    }

    @Test
    void redrawsWhatIsTypedUndoesItAndSavesWhatIsLeft() {
        ProposalView proposal = saloon();
        Page page = revising(proposal, ColorScheme.LIGHT, 1280);
        Locator state = page.locator(".live__state");
        Locator wheelbase = page.locator("#dimensions-wheelbase");
        String kept = wheelbase.inputValue();
        String before = drawing(page);
        assertThat(state).containsText("is not outside its band");
        assertThat(state).containsText("As saved.");

        type(page, "#dimensions-wheelbase", "3500");
        assertThat(state).containsText("One of 1 measures is outside its band");
        assertThat(state).containsText("As typed, not saved.");
        assertThat(drawing(page)).isNotEqualTo(before).contains("3500");
        assertThat(proposals.get(proposal.id(), studio.person(Role.DESIGNER)).version())
                .isEqualTo(proposal.version());

        page.getByRole(AriaRole.BUTTON, named("Undo")).click();
        assertThat(wheelbase).hasValue(kept);
        assertThat(page.locator("[data-live-said]")).containsText("Undone: Wheelbase");
        assertThat(state).containsText("is not outside its band");
        page.keyboard().press("Control+Shift+Z");
        assertThat(wheelbase).hasValue("3500");
        assertThat(state).containsText("One of 1 measures is outside its band");
        page.keyboard().press("Control+Z");
        assertThat(wheelbase).hasValue(kept);
        assertThat(page.getByRole(AriaRole.BUTTON, named("Undo"))).isDisabled();

        page.locator("#section-widths").click();
        type(page, "#dimensions-overallWidth", "1811");
        page.getByRole(AriaRole.BUTTON, named("Save the revision")).click();
        assertThat(page.getByRole(AriaRole.STATUS).first()).containsText("Revision 2 is saved and judged.");
    }

    @Test
    void saysBesideTheInputWhatIsWrongAndKeepsTheLastDrawing() {
        Page page = revising(saloon(), ColorScheme.LIGHT, 1280);
        String before = drawing(page);
        Locator wheelbase = page.locator("#dimensions-wheelbase");
        String kept = wheelbase.inputValue();

        type(page, "#dimensions-wheelbase", "280");
        Locator error = page.locator("#dimensions-wheelbase-live-error");
        assertThat(error).containsText("outside the plausible range 1000 to 6000 mm");
        assertThat(wheelbase).hasAttribute("aria-describedby", "dimensions-wheelbase-live-error");
        assertThat(drawing(page)).isEqualTo(before);
        visit.meetsTheRules("a value that cannot be drawn");

        type(page, "#dimensions-wheelbase", kept);
        assertThat(error).hasCount(0);
        assertThat(page.locator("#live-wrong")).isEmpty();
    }

    /** 13 mm to the front and 5 mm up, in a drawing that has 1 mm to a unit, by pointer; then 1 mm and a tenth by keyboard. */
    @Test
    void pullsALandmarkOnTheDrawing() {
        Page page = revising(outlined(), ColorScheme.LIGHT, 1280);
        Locator cowl = page.locator("[data-handle=cowl]");
        Locator x = page.locator("[name='dimensions.cowl.x']");
        double before = Double.parseDouble(x.inputValue());
        String line = page.locator("[name='dimensions.outline']").inputValue();
        var box = cowl.locator(".handle__mark").boundingBox();
        page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
        page.mouse().down();
        page.mouse().move(box.x + box.width / 2 - 12, box.y + box.height / 2 - 3);
        page.mouse().up();
        assertThat(page.getByRole(AriaRole.BUTTON, named("Undo"))).isEnabled();
        double pulled = Double.parseDouble(x.inputValue());
        assertThat(pulled).isLessThan(before).isEqualTo(Math.rint(pulled));
        assertThat(page.locator("[name='dimensions.outline']").inputValue()).isNotEqualTo(line);

        cowl.focus();
        page.keyboard().press("ArrowRight");
        assertThat(x).hasValue(String.valueOf((long) pulled + 1));
        page.keyboard().press("Shift+ArrowRight");
        assertThat(x).hasValue((long) pulled + 1 + ".1");
        visit.meetsTheRules("a landmark that is pulled");

        for (int i = 0; i < 3; i++) {
            page.getByRole(AriaRole.BUTTON, named("Undo")).click();
        }
        assertThat(x).hasValue(String.valueOf((long) before));
        assertThat(page.locator("[name='dimensions.outline']")).hasValue(line);
    }

    @Test
    void lengthFollowsTheWheelbaseAndIsUndoneWithIt() {
        Page page = revising(outlined(), ColorScheme.LIGHT, 1280);
        Locator length = page.locator("[name='dimensions.overallLength']");
        double before = Double.parseDouble(length.inputValue());
        double wheelbase =
                Double.parseDouble(page.locator("#dimensions-wheelbase").inputValue());

        type(page, "#dimensions-wheelbase", String.valueOf((long) wheelbase + 29));
        assertThat(length).hasValue(String.valueOf((long) before + 29));
        assertThat(page.locator("[data-live-said]")).containsText("With it: Overall length");
        page.getByRole(AriaRole.BUTTON, named("Undo")).click();
        assertThat(length).hasValue(String.valueOf((long) before));
    }

    @Test
    void keepsADraftOfWhatWasNotSaved() {
        ProposalView proposal = saloon();
        Page page = revising(proposal, ColorScheme.LIGHT, 1280);
        page.locator("#section-widths").click();
        type(page, "#dimensions-overallWidth", "1811");
        page.onDialog(dialog -> dialog.accept());
        page.navigate(studio.address() + "/account");
        page.navigate(studio.address() + "/proposals/" + proposal.id() + "/revise");
        assertThat(page.locator("#dimensions-overallWidth")).not().hasValue("1811");
        page.getByRole(AriaRole.BUTTON, named("Restore it")).click();
        assertThat(page.locator("#dimensions-overallWidth")).hasValue("1811");
        page.getByRole(AriaRole.BUTTON, named("Save the revision")).click();
        assertThat(page.getByRole(AriaRole.STATUS).first()).containsText("is saved and judged");
        page.navigate(studio.address() + "/proposals/" + proposal.id() + "/revise");
        assertThat(page.locator("[data-live-draft]")).isHidden();
    }

    private ProposalView outlined() {
        String segment = Invented.key("pulled");
        segments.create(segment, "Saloons that are pulled", "Invented saloons.");
        DimensionSet drawn = InventedCatalogue.vehicles().stream()
                .map(InventedVehicle::dimensions)
                .filter(set -> !set.points(Polyline.OUTLINE).isEmpty())
                .findFirst()
                .orElseThrow();
        return proposals.make(new ProposalDraft("Tern", segment, drawn, ""), studio.person(Role.DESIGNER));
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 360", "DARK, 768", "DARK, 1280", "LIGHT, 2560"})
    void meetsTheRulesWhileItIsTyped(ColorScheme scheme, int width) {
        Page page = revising(saloon(), scheme, width);
        type(page, "#dimensions-wheelbase", "3500");
        assertThat(page.locator(".live__state")).containsText("One of 1 measures is outside its band");
        visit.meetsTheRules("revising at " + width);
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name).setExact(true);
    }
}

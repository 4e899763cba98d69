package studio.stancebook.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** The page of the studio's own ratios. */
@StudioTest
class RatioPagesTest {

    private static final String PAGE = "/studio/ratios";

    @Autowired
    StudioClients studio;

    @Autowired
    StudioMeasures measures;

    @Test
    void addARatioPickedFromListsAndRemoveIt() {
        StudioBrowser lead = studio.browser(Role.LEAD);

        HttpResponse<String> added = lead.submit(
                PAGE,
                PAGE,
                Map.of(
                        "name",
                        "Nose & tail",
                        "over1",
                        "frontOverhang",
                        "over3",
                        "rearOverhang",
                        "under1",
                        "wheelbase"));

        assertThat(added.statusCode()).isEqualTo(302);
        assertThat(measures.current().get("nose-tail").definition())
                .isEqualTo("Front overhang + Rear overhang over Wheelbase.");
        assertThat(lead.get(PAGE).body())
                .contains("Nose &amp; tail")
                .contains("Front overhang + Rear overhang over Wheelbase.");

        String remove = PAGE + "/nose-tail/remove";
        assertThat(lead.submit(remove, remove, Map.of()).statusCode()).isEqualTo(302);
        assertThat(measures.current().find("nose-tail")).isEmpty();
        assertThat(lead.get(remove).statusCode()).isEqualTo(404);
    }

    @Test
    void keepWhatWasPickedWhenItIsRefused() {
        HttpResponse<String> refused = studio.browser(Role.LEAD)
                .submit(PAGE, PAGE, Map.of("name", "Half a ratio", "key", "Half", "over1", "cowl.z"));

        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body())
                .contains("value=\"Half a ratio\"")
                .contains("value=\"Half\"")
                .contains("<option value=\"cowl.z\" selected=\"selected\">")
                .contains("One to 8 lengths are needed, not 0.");
    }

    @Test
    void areReadByEverybodyAndChangedByLeads() {
        StudioBrowser designer = studio.browser(Role.DESIGNER);

        assertThat(designer.get(PAGE).body()).doesNotContain("name=\"over1\"");
        assertThat(designer.submit(PAGE, PAGE, Map.of("name", "Theirs")).statusCode())
                .isEqualTo(403);
    }
}

package studio.stancebook.operations;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import studio.stancebook.StudioBrowser;
import studio.stancebook.hostile.Barrage;

/** Random requests to the packaged server, which has 256 MB: {@link Barrage}. */
class RandomRequestsIT {

    private static final int REQUESTS = Barrage.number(1_500);

    private static final String GIVEN = "given by the lead";

    /** Ids below this are hit by random requests; who takes on leads must outlast them. */
    private static final int HIT = 16;

    @TempDir
    Path folder;

    private int people;

    @Test
    void areAnsweredOrRefusedAndTellNothingOfTheInside() throws IOException, InterruptedException {
        try (PackagedStudio studio = PackagedStudio.in(folder).andWait()) {
            StudioApi first = StudioApi.asLead(studio);
            for (String key : Barrage.SEGMENTS) {
                first.addSegment(key);
                for (int i = 0; i < Barrage.PACKAGES; i++) {
                    first.postPackage(key, "Invented " + i);
                }
            }
            StudioApi lasting = lastingLead(studio, first);
            StudioBrowser browser = new StudioBrowser(studio.address().toString());
            browser.signIn(PackagedStudio.LEAD, PackagedStudio.PASSWORD);

            new Barrage(
                            studio.address().toString(),
                            browser.get("/v3/api-docs").body(),
                            () -> freshLead(studio, lasting).secret())
                    .send(REQUESTS);

            assertThat(studio.process().runs()).isTrue();
            assertThat(studio.console()).doesNotContain("OutOfMemoryError", " ERROR ");
            assertThat(lasting.read("/api/v1/activity/verification")
                            .get("whole")
                            .asBoolean())
                    .isTrue();
        }
    }

    private StudioApi lastingLead(PackagedStudio studio, StudioApi first) {
        StudioApi lead = first;
        for (int i = 0; i < HIT; i++) {
            lead = freshLead(studio, first);
        }
        return lead;
    }

    private StudioApi freshLead(PackagedStudio studio, StudioApi by) {
        String email = "lead-" + people++ + "@studio.example";
        by.made(
                "/api/v1/people",
                "{\"email\": \"%s\", \"displayName\": \"Lead\", \"role\": \"lead\", \"password\": \"%s\"}"
                        .formatted(email, GIVEN));
        StudioBrowser browser = new StudioBrowser(studio.address().toString());
        browser.signIn(email, GIVEN);
        browser.submit(
                "/account/password",
                "/account/password",
                Map.of("currentPassword", GIVEN, "newPassword", PackagedStudio.PASSWORD));
        return StudioApi.asPerson(studio, email);
    }
}

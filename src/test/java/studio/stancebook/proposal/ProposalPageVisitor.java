package studio.stancebook.proposal;

import java.net.URI;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Author;
import studio.stancebook.access.Role;
import studio.stancebook.band.BandSetting;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.statistics.BandMethod;

/** Opens pages of proposals, in a segment with one band. */
abstract class ProposalPageVisitor {
    static final String MEASURE = "wheelbase-in-wheels";

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Bands bands;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Proposals proposals;

    String segment = "";

    @BeforeEach
    void makeSegmentWithABand() {
        segment = Invented.key("proposal-pages");
        segments.create(segment, "Segment of a test", "");
        setBand(3, 3.5, 0);
        for (int wheels = 3; wheels <= 5; wheels++) {
            catalogue.add(Invented.draft(segment, Invented.name("Benchmark"), 700 * wheels), new Author(null, "Tests"));
        }
    }

    void setBand(double lower, double upper, long expected) {
        bands.set(
                segment,
                MEASURE,
                BandSetting.of(new BandMethod.Rule(lower, upper, "Of a test")),
                "Of a test",
                expected == 0 ? null : new ExpectedVersion(expected),
                new Author(null, "Lead"));
    }

    Map<String, String> form(String... more) {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("name", "Tern");
        form.put("segment", segment);
        form.put("note", "First sketch");
        form.put("dimensions.wheelbase", "2800");
        form.put("dimensions.frontTyreDiameter", "700");
        form.put("dimensions.rearTyreDiameter", "700");
        for (int i = 0; i < more.length; i += 2) {
            form.put(more[i], more[i + 1]);
        }
        return form;
    }

    static DimensionSet dimensions(double wheelbase) {
        return DimensionSet.builder()
                .set(Dimension.WHEELBASE, wheelbase)
                .set(Dimension.FRONT_TYRE_DIAMETER, 700)
                .set(Dimension.REAR_TYRE_DIAMETER, 700)
                .build();
    }

    ProposalView made(Role role) {
        return proposals.make(
                new ProposalDraft("Tern", segment, dimensions(2800), "First sketch"), studio.person(role));
    }

    static String target(HttpResponse<String> redirect) {
        return URI.create(redirect.headers().firstValue("Location").orElseThrow())
                .getPath();
    }

    static String address(ProposalView proposal) {
        return "/proposals/" + proposal.id();
    }
}

package studio.stancebook.proposal.chart;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.persistence.EntityManagerFactory;
import java.awt.geom.Rectangle2D;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
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
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.Variable;
import studio.stancebook.paper.LetterWidths;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.Proposals;

/** The charts of a segment, as without script. */
@StudioTest
class ChartsPageTest {

    private static final int MOST_BYTES_OF_A_CLASS = 100_000;

    @Autowired
    StudioClients studio;

    @Autowired
    Segments segments;

    @Autowired
    Catalogue catalogue;

    @Autowired
    Proposals proposals;

    @Autowired
    EntityManagerFactory entities;

    private String segment = "";

    @BeforeEach
    void makeSegment() {
        segment = Invented.key("charts");
        segments.create(segment, "Charted " + segment, "");
    }

    private String page(Role role, String query) {
        return studio.browser(role)
                .get("/segments/" + segment + "/charts" + query)
                .body();
    }

    private static int count(String page, String part) {
        return page.split(java.util.regex.Pattern.quote(part), -1).length - 1;
    }

    @Test
    void drawsTheClassItsEllipseAndTheProposals() {
        List<PackageDraft> fleet = InventedFleet.of(segment);
        List<Long> ids = catalogue.addAll(fleet, new Author(null, "Lead"));
        proposals.make(new ProposalDraft("Tern", segment, fleet.get(2).dimensions(), ""), studio.person(Role.DESIGNER));

        String page = page(Role.VIEWER, "");

        assertThat(page)
                .contains("href=\"/packages/" + ids.get(0) + "\"")
                .contains("scatter__ellipse--own")
                .contains("aria-label=\"Proposal Tern:")
                .contains(fleet.size() + " benchmarks have both")
                .doesNotContain("??");
        assertThat(count(page, "class=\"scatter__dot\"")).isEqualTo(fleet.size());
        assertThat(page(Role.LEARNER, "")).doesNotContain("Proposal Tern:");
    }

    /**
     * Ten proposals whose marks all but coincide, in a class among others: read back from the page with the widths of the
     * font file, at the letter sizes of the style sheet for wide, middle and narrow pages.
     */
    @Test
    void namesKeepClearOfEachOtherInATightClass() {
        List<PackageDraft> fleet = InventedFleet.of(segment);
        catalogue.addAll(fleet, new Author(null, "Lead"));
        for (int i = 0; i < 10; i++) {
            proposals.make(
                    new ProposalDraft(
                            "Proposal no " + i,
                            segment,
                            fleet.get(2).dimensions().moved(Variable.of(Dimension.WHEELBASE), i),
                            ""),
                    studio.person(Role.DESIGNER));
        }
        for (int i = 0; i < 3; i++) {
            String beside = Invented.key("beside");
            segments.create(beside, "Segment beside it " + i, "");
            catalogue.addAll(InventedFleet.of(beside), new Author(null, "Lead"));
        }

        Element names = Jsoup.parse(page(Role.VIEWER, "")).selectFirst(".scatter__names");

        assertThat(names.select(".scatter__name")).hasSize(10);
        assertThat(names.select("text").size()).isGreaterThanOrEqualTo(14);
        assertThat(Jsoup.parse(page(Role.VIEWER, "")).select(".scatter__leader"))
                .isNotEmpty();
        assertThat(collisions(names.select("text"), 17, 17)).isEmpty();
        assertThat(collisions(names.select("text"), 26, 26)).isEmpty();
        assertThat(collisions(names.select(".scatter__name"), 30, 30)).isEmpty();
    }

    private static List<String> collisions(List<Element> names, double ellipsePx, double markPx) {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            for (int j = i + 1; j < names.size(); j++) {
                if (box(names.get(i), ellipsePx, markPx).intersects(box(names.get(j), ellipsePx, markPx))) {
                    found.add(names.get(i).text() + " lies over " + names.get(j).text());
                }
            }
        }
        return found;
    }

    private static Rectangle2D box(Element name, double ellipsePx, double markPx) {
        boolean mark = name.hasClass("scatter__name");
        double size = mark ? markPx : ellipsePx;
        double width = LetterWidths.em(name.text(), mark) * size;
        double x = Double.parseDouble(name.attr("x"));
        double left = switch (name.attr("text-anchor")) {
            case "start" -> x;
            case "end" -> x - width;
            default -> x - width / 2;
        };
        return new Rectangle2D.Double(left, Double.parseDouble(name.attr("y")) - 0.72 * size, width, 0.9 * size);
    }

    @Test
    void saysWhyThereIsNoEllipse() {
        catalogue.add(Invented.draft(segment, Invented.name("Benchmark"), 2700), new Author(null, "Lead"));

        assertThat(page(Role.VIEWER, "?x=wheelbase-in-wheels&y=wheelbase-in-wheels"))
                .contains("Charted " + segment
                        + " has no ellipse: one benchmark has both measures, and three are needed.")
                .doesNotContain("scatter__ellipse--own");

        catalogue.add(Invented.draft(segment, Invented.name("Benchmark"), 2800), new Author(null, "Lead"));
        catalogue.add(Invented.draft(segment, Invented.name("Benchmark"), 2900), new Author(null, "Lead"));

        assertThat(page(Role.VIEWER, "?x=wheelbase-in-wheels&y=wheelbase-in-wheels"))
                .contains("Charted " + segment + " has no ellipse: its 3 benchmarks lie on one line.");
    }

    @Test
    void sayWhatToDoWhereThereIsNothingAndWhichMeasuresThereAre() {
        assertThat(page(Role.VIEWER, "?x=approach-angle")).contains("record more dimensions", "To the packages");

        var refused = studio.browser(Role.VIEWER).get("/segments/" + segment + "/charts?y=nonsense");
        assertThat(refused.statusCode()).isEqualTo(400);
        assertThat(refused.body()).contains("There is no such measure: choose one of the list.");
        assertThat(studio.browser(Role.VIEWER).get("/segments/no-such/charts").statusCode())
                .isEqualTo(404);
    }

    @Test
    void drawThousandsAsADensityOnASmallPage() {
        SplittableRandom random = new SplittableRandom(7);
        int without = bytes(page(Role.VIEWER, ""));
        List<PackageDraft> fleet = InventedFleet.of(segment);
        List<PackageDraft> many = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            PackageDraft like = fleet.get(i % fleet.size());
            many.add(new PackageDraft(
                    "Benchmark " + i,
                    segment,
                    like.modelYear(),
                    like.origin(),
                    like.dimensions()
                            .moved(Variable.of(Dimension.WHEELBASE), random.nextDouble(-40, 40))
                            .moved(Variable.of(Dimension.FRONT_TYRE_DIAMETER), random.nextDouble(-9, 9))));
        }
        catalogue.addAll(many, new Author(null, "Lead"));

        String page = page(Role.VIEWER, "");

        assertThat(bytes(page) - without).isLessThan(MOST_BYTES_OF_A_CLASS);
        assertThat(count(page, "class=\"scatter__dot\"")).isEqualTo(Scatter.MOST_OUTER);
        assertThat(page).contains("scatter__density", "The 60 that lie furthest out are drawn one by one.");
    }

    @Test
    void takesFewStatementsHoweverManySegmentsThereAre() {
        for (int i = 0; i < 5; i++) {
            segments.create(Invented.key("more"), "More " + i, "");
        }
        catalogue.addAll(InventedFleet.of(segment), new Author(null, "Lead"));
        StudioBrowser viewer = studio.browser(Role.VIEWER);

        long least = IntStream.range(0, 3)
                .mapToLong(time -> statements(viewer))
                .min()
                .orElseThrow();

        assertThat(least).isLessThan(8);
    }

    private static int bytes(String page) {
        return page.getBytes(StandardCharsets.UTF_8).length;
    }

    private long statements(StudioBrowser viewer) {
        Statistics statistics = entities.unwrap(SessionFactory.class).getStatistics();
        statistics.setStatisticsEnabled(true);
        statistics.clear();
        viewer.get("/segments/" + segment + "/charts");
        long statements = statistics.getPrepareStatementCount();
        statistics.setStatisticsEnabled(false);
        return statements;
    }
}

package studio.stancebook.proposal.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import studio.stancebook.band.AppliedBand;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.Finding;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.drawing.rendering.SheetFigure;
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.paper.Group;
import studio.stancebook.paper.Group.StructureRole;
import studio.stancebook.paper.Paragraphs;
import studio.stancebook.paper.VectorPage;
import studio.stancebook.proposal.Decision;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.RevisionView;

/** The sheet that a review signs: A3 laid across, everything that was judged on one page. */
final class ReviewSheet {

    private static final double WIDTH_MM = 420;
    private static final double HEIGHT_MM = 297;
    static final double MARGIN_MM = 12;
    static final double DRAWING_MM = 236;
    private static final double DRAWING_TOP_MM = 32;
    private static final double STRIPS_LEFT_MM = WIDTH_MM - MARGIN_MM - ReviewStrips.WIDTH_MM;
    private static final double FOOT_MM = 280;
    private static final double DECISION_TOP_MM = 224;

    static final String INK = "#1e2123";
    static final String SOFT = "#5a5e5c";
    static final String RED = "#b9232a";
    private static final String PAPER = "#ffffff";

    private final ProposalView proposal;
    private final RevisionView shown;
    private final SideView view;
    private final AssessmentView assessment;
    private final @Nullable Decision decision;
    private final MessageSource messages;
    private final LocalDate date;

    /** @param decision on this revision; null where there is none yet, so that it is written by hand */
    ReviewSheet(
            ProposalView proposal,
            RevisionView shown,
            SideView view,
            AssessmentView assessment,
            @Nullable Decision decision,
            MessageSource messages,
            LocalDate date) {
        this.proposal = proposal;
        this.shown = shown;
        this.view = view;
        this.assessment = assessment;
        this.decision = decision;
        this.messages = messages;
        this.date = date;
    }

    VectorPage page() {
        List<Group> groups = new ArrayList<>();
        groups.addAll(head());
        double below = DRAWING_TOP_MM + drawing(groups);
        groups.addAll(basis(below));
        groups.addAll(strips());
        groups.addAll(new DecisionBox(decision, this::words).groups(DECISION_TOP_MM, FOOT_MM));
        groups.addAll(foot());
        String title = words("proposal.sheet.title", proposal.name(), shown.number());
        return new VectorPage(title, view.description(), WIDTH_MM, HEIGHT_MM, null, groups);
    }

    private String words(String key, Object... places) {
        Object[] plain = Stream.of(places).map(String::valueOf).toArray();
        return messages.getMessage(key, plain, Locale.ROOT);
    }

    private List<Group> head() {
        Paragraphs head = new Paragraphs(MARGIN_MM, MARGIN_MM, WIDTH_MM - 2 * MARGIN_MM, DRAWING_TOP_MM);
        String title = words("proposal.sheet.title", proposal.name(), shown.number());
        if (!head.add(StructureRole.TITLE, title, 7, true, INK)) {
            head.add(StructureRole.TITLE, title, 3.5, true, INK);
        }
        head.add(
                StructureRole.PARAGRAPH,
                words(
                        "proposal.sheet.about",
                        shown.segment().name(),
                        proposal.ownerName(),
                        shown.author(),
                        Amounts.time(shown.at())),
                3.2,
                false,
                SOFT);
        return head.groups();
    }

    /** The side view, and how high it is. */
    private double drawing(List<Group> groups) {
        Sheet sheet = view.wide();
        groups.add(
                new SheetFigure(sheet, DRAWING_MM, MARGIN_MM, DRAWING_TOP_MM, 0.82, PAPER).figure(view.description()));
        return DRAWING_MM * sheet.height() / sheet.width();
    }

    /** What the verdicts stand on: the class, the band versions, the note. */
    private List<Group> basis(double top) {
        Paragraphs text = new Paragraphs(MARGIN_MM, top + 4, DRAWING_MM, DECISION_TOP_MM - 4);
        view.captions().forEach(caption -> text.add(StructureRole.PARAGRAPH, caption, 2.8, false, SOFT));
        text.skip(1.5);
        text.add(StructureRole.HEADING, words("proposal.sheet.basis"), 3.6, true, INK);
        text.add(
                StructureRole.PARAGRAPH,
                words("proposal.sheet.class", shown.segment().name(), shown.classRevision()),
                2.8,
                false,
                INK);
        if (assessment.missing() > 0) {
            text.add(StructureRole.PARAGRAPH, words("proposal.class.missing", assessment.missing()), 2.8, false, INK);
        }
        String versions = versions(shown.assessment());
        if (!versions.isEmpty() && !text.add(StructureRole.PARAGRAPH, versions, 2.8, false, INK)) {
            text.add(StructureRole.PARAGRAPH, words("proposal.sheet.bands.many"), 2.8, false, INK);
        }
        if (!shown.note().isBlank()) {
            text.add(StructureRole.PARAGRAPH, words("proposal.sheet.note", shown.note()), 2.8, false, INK);
        }
        return text.groups();
    }

    /** The version that most bands are at, and those that are at another. */
    private String versions(Assessment assessment) {
        Map<Integer, List<String>> names = new TreeMap<>();
        for (Finding finding : assessment.findings()) {
            AppliedBand band = finding.band();
            if (band != null) {
                names.computeIfAbsent(band.version(), version -> new ArrayList<>())
                        .add(finding.name());
            }
        }
        if (names.isEmpty()) {
            return "";
        }
        int most = Collections.max(
                        names.entrySet(),
                        Comparator.comparing(entry -> entry.getValue().size()))
                .getKey();
        String others = names.entrySet().stream()
                .filter(entry -> entry.getKey() != most)
                .flatMap(entry -> entry.getValue().stream().map(name -> name + " v" + entry.getKey()))
                .collect(Collectors.joining(", "));
        return others.isEmpty()
                ? words("proposal.sheet.bands.same", most)
                : words("proposal.sheet.bands", most, others);
    }

    private List<Group> strips() {
        return new ReviewStrips(assessment, this::words, STRIPS_LEFT_MM, DRAWING_TOP_MM, FOOT_MM).groups();
    }

    private List<Group> foot() {
        Paragraphs foot = new Paragraphs(MARGIN_MM, FOOT_MM + 2, WIDTH_MM - 2 * MARGIN_MM, HEIGHT_MM);
        foot.add(StructureRole.PARAGRAPH, words("proposal.sheet.caution"), 3, true, INK);
        foot.add(StructureRole.PARAGRAPH, words("proposal.sheet.printed", date), 2.5, false, SOFT);
        return foot.groups();
    }
}

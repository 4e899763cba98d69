package studio.stancebook.proposal.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import studio.stancebook.account.SignedIn;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.Bands;
import studio.stancebook.band.Finding;
import studio.stancebook.band.Verdict;
import studio.stancebook.catalogue.ClassSnapshots;
import studio.stancebook.dimension.Scale;
import studio.stancebook.drawing.SideView;
import studio.stancebook.drawing.SideViewOptions;
import studio.stancebook.proposal.AssessmentDifference;
import studio.stancebook.proposal.DimensionDifference;
import studio.stancebook.proposal.MeasureChange;
import studio.stancebook.proposal.ProposalRights;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.RevisionView;

/** Fills the page of one proposal. */
@Component
class ProposalPageModel {

    private static final int REVISIONS_SHOWN = 50;

    private final Proposals proposals;
    private final Bands bands;
    private final ClassSnapshots classes;
    private final FindingWords words;

    ProposalPageModel(Proposals proposals, Bands bands, ClassSnapshots classes, FindingWords words) {
        this.proposals = proposals;
        this.bands = bands;
        this.classes = classes;
        this.words = words;
    }

    void fill(ProposalView proposal, RevisionView shown, SignedIn who, Model model) {
        RevisionView before = shown.number() == 1 ? null : proposals.revision(proposal.id(), shown.number() - 1, who);
        boolean unscaled = shown.dimensions().scale() == Scale.UNSCALED;
        model.addAttribute("proposal", proposal);
        model.addAttribute("stage", proposal.stage().key());
        model.addAttribute("shown", shown);
        model.addAttribute("at", Amounts.time(shown.at()));
        model.addAttribute("newest", shown.number() == proposal.newest().number());
        model.addAttribute("changes", ProposalRights.changes(who, proposal.ownerId()));
        model.addAttribute("unscaled", unscaled);
        model.addAttribute("view", sideView(proposal, shown));
        model.addAttribute("assessment", assessment(shown, before, unscaled));
        model.addAttribute("otherwise", otherwise(shown));
        model.addAttribute("revisions", revisions(proposal, shown, who));
        addDifference(before, shown, model);
    }

    private AssessmentView assessment(RevisionView shown, @Nullable RevisionView before, boolean unscaled) {
        String segment = shown.segment().key();
        ProposalStrips strips = new ProposalStrips(
                classes.of(segment),
                bands.current(segment),
                before == null ? null : before.assessment(),
                words,
                unscaled);
        return AssessmentView.of(shown.assessment(), strips);
    }

    private SideView sideView(ProposalView proposal, RevisionView shown) {
        Assessment assessment = shown.assessment();
        Map<String, String> remarks = new HashMap<>();
        assessment.findings().stream()
                .filter(finding -> finding.kind().outside())
                .forEach(finding -> remarks.put(finding.measure(), words.over(finding)));
        return SideView.of(
                shown.dimensions(),
                SideViewOptions.of("side-view", proposal.name())
                        .withOutside(measures(assessment, Verdict.Kind::outside))
                        .withTooClose(measures(assessment, kind -> kind == Verdict.Kind.TOO_CLOSE))
                        .withRemarks(remarks));
    }

    private static Set<String> measures(Assessment assessment, Predicate<Verdict.Kind> which) {
        return assessment.findings().stream()
                .filter(finding -> which.test(finding.kind()))
                .map(Finding::measure)
                .collect(Collectors.toSet());
    }

    /** Where the bands of today would judge otherwise than the assessment says. */
    private List<ChangeLine> otherwise(RevisionView shown) {
        return lines(AssessmentDifference.between(shown.assessment(), proposals.today(shown))
                .verdicts());
    }

    private List<RevisionLine> revisions(ProposalView proposal, RevisionView shown, SignedIn who) {
        return proposals.revisions(proposal.id(), PageRequest.of(0, REVISIONS_SHOWN), who).stream()
                .map(revision -> RevisionLine.of(revision, shown.number()))
                .toList();
    }

    private static void addDifference(@Nullable RevisionView before, RevisionView shown, Model model) {
        model.addAttribute("before", before == null ? null : before.number());
        if (before != null) {
            AssessmentDifference difference = AssessmentDifference.between(before.assessment(), shown.assessment());
            model.addAttribute(
                    "dimensionChanges", DimensionDifference.between(before.dimensions(), shown.dimensions()));
            model.addAttribute("verdictChanges", lines(difference.verdicts()));
            model.addAttribute("valueChanges", lines(difference.values()));
        }
    }

    private static List<ChangeLine> lines(List<MeasureChange> changes) {
        return changes.stream().map(ChangeLine::of).toList();
    }
}

package studio.stancebook.proposal.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.PageRequest;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import studio.stancebook.account.SignedIn;
import studio.stancebook.dimension.Scale;
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
    private final ProposalPictures pictures;

    ProposalPageModel(Proposals proposals, ProposalPictures pictures) {
        this.proposals = proposals;
        this.pictures = pictures;
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
        model.addAttribute("view", pictures.sideView(proposal.name(), shown.dimensions(), shown.assessment()));
        model.addAttribute(
                "assessment",
                pictures.assessment(
                        shown.segment().key(),
                        shown.assessment(),
                        before == null ? null : before.assessment(),
                        unscaled));
        model.addAttribute("otherwise", otherwise(shown));
        model.addAttribute("revisions", revisions(proposal, shown, who));
        addDifference(before, shown, model);
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

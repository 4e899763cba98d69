package studio.stancebook.proposal.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import studio.stancebook.dimension.Scale;
import studio.stancebook.proposal.AssessmentDifference;
import studio.stancebook.proposal.DimensionDifference;
import studio.stancebook.proposal.MeasureChange;
import studio.stancebook.proposal.ProposalStanding;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.RevisionView;
import studio.stancebook.proposal.ShownRevision;

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

    /** @param changes whether the reader may change the proposal; the reader decides on nothing else */
    Map<String, Object> of(ProposalStanding standing, boolean changes) {
        ShownRevision shown = proposals.shown(standing, REVISIONS_SHOWN);
        RevisionView revision = shown.revision();
        Map<String, Object> model = new HashMap<>();
        model.put("standing", standing);
        model.put("stage", standing.stage().key());
        model.put("shown", revision);
        model.put("at", Amounts.time(revision.at()));
        model.put("newest", revision.number() == standing.newest());
        model.put("changes", changes);
        model.put("unscaled", revision.dimensions().scale() == Scale.UNSCALED);
        model.put("view", pictures.sideView(standing.name(), shown));
        model.put("assessment", pictures.assessment(shown));
        model.put("otherwise", otherwise(shown));
        model.put("revisions", revisions(shown));
        addDifference(shown, model);
        return model;
    }

    /** Where the bands of today would judge otherwise than the assessment says. */
    private static List<ChangeLine> otherwise(ShownRevision shown) {
        return lines(AssessmentDifference.between(shown.revision().assessment(), shown.today())
                .verdicts());
    }

    private static List<RevisionLine> revisions(ShownRevision shown) {
        return shown.newestRevisions().stream()
                .map(revision -> RevisionLine.of(revision, shown.revision().number()))
                .toList();
    }

    private static void addDifference(ShownRevision shown, Map<String, Object> model) {
        ShownRevision.Earlier before = shown.before();
        if (before != null) {
            RevisionView revision = shown.revision();
            AssessmentDifference difference = AssessmentDifference.between(before.assessment(), revision.assessment());
            model.put("before", before.number());
            model.put("dimensionChanges", DimensionDifference.between(before.dimensions(), revision.dimensions()));
            model.put("verdictChanges", lines(difference.verdicts()));
            model.put("valueChanges", lines(difference.values()));
        }
    }

    private static List<ChangeLine> lines(List<MeasureChange> changes) {
        return changes.stream().map(ChangeLine::of).toList();
    }
}

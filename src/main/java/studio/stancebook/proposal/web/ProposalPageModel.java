package studio.stancebook.proposal.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import studio.stancebook.access.Permission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.dimension.Scale;
import studio.stancebook.drawing.rendering.FragmentCache;
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.measure.OffRoadTable;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.proposal.AssessmentDifference;
import studio.stancebook.proposal.DimensionDifference;
import studio.stancebook.proposal.MeasureChange;
import studio.stancebook.proposal.ProposalState;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.RevisionView;
import studio.stancebook.proposal.ShownRevision;

/** Fills the page of one proposal. */
@Component
class ProposalPageModel {

    private static final int REVISIONS_SHOWN = 50;
    private static final int DECISIONS_SHOWN = 20;

    private final Proposals proposals;
    private final ProposalPictures pictures;
    private final FragmentCache fragments;

    ProposalPageModel(Proposals proposals, ProposalPictures pictures, FragmentCache fragments) {
        this.proposals = proposals;
        this.pictures = pictures;
        this.fragments = fragments;
    }

    /** What decides on the drawing. */
    private record Drawing(ProposalState state) {}

    /** What decides on the strips. */
    private record Verdicts(ProposalState state) {}

    Map<String, Object> of(ProposalState state, SignedIn who) {
        ShownRevision shown = proposals.shown(state, REVISIONS_SHOWN);
        RevisionView revision = shown.revision();
        Map<String, Object> model = new HashMap<>();
        model.put("state", state);
        model.put("stage", state.stage().key());
        model.put("shown", revision);
        model.put("at", Amounts.time(revision.at()));
        model.put("newest", revision.number() == state.newest());
        model.put("unscaled", revision.dimensions().scale() == Scale.UNSCALED);
        addPictures(state, shown, model);
        model.put("offRoad", OffRoadTable.of(revision.dimensions()));
        model.put("otherwise", otherwise(shown));
        model.put("revisions", revisions(shown));
        addDifference(shown, model);
        addDecisions(state, who, model);
        return model;
    }

    private void addDecisions(ProposalState state, SignedIn who, Map<String, Object> model) {
        boolean changes = who.may(Permission.CHANGE_PROPOSALS, state.ownerId());
        model.put("changes", changes);
        model.put("decides", changes && who.may(Permission.AGREE_TO_PROPOSALS));
        model.put(
                "decisions",
                proposals.decisions(state, DECISIONS_SHOWN).stream()
                        .map(DecisionLine::of)
                        .toList());
        model.put("decision", Deciding.DecisionForm.empty());
        model.put("errors", FieldErrors.none());
    }

    private void addPictures(ProposalState state, ShownRevision shown, Map<String, Object> model) {
        SideView view = pictures.sideView(state.name(), shown);
        AssessmentView assessment = pictures.assessment(shown);
        model.put("view", view);
        model.put("assessment", assessment);
        model.put("drawing", fragments.get(new Drawing(state), "proposal/drawing", () -> Map.of("view", view)));
        model.put(
                "verdicts",
                fragments.get(
                        new Verdicts(state),
                        "proposal/verdicts",
                        () -> Map.of("view", view, "assessment", assessment)));
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

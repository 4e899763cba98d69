package studio.stancebook.proposal.web;

import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.DimensionJson;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.Impossible;
import studio.stancebook.proposal.ProposalChange;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.Stage;

/**
 * A proposal or a revision as it is sent.
 *
 * @param name of a proposal
 * @param segment key of a proposal's segment
 * @param stage of a proposal that is changed
 * @param dimensions of a new proposal or revision
 * @param note to a revision
 */
record ProposalBody(
        @Nullable String name,
        @Nullable String segment,
        @Nullable String stage,
        @Nullable Map<String, Object> dimensions,
        @Nullable String note) {

    ProposalDraft draft() {
        return new ProposalDraft(text(name), neededSegment(), dimensionSet(), noteText());
    }

    ProposalChange change() {
        return new ProposalChange(text(name), neededSegment(), neededStage());
    }

    DimensionSet dimensionSet() {
        if (dimensions == null) {
            throw Impossible.ofField(
                    "dimensions", "dimensions are missing: an object with at least the wheelbase, in mm.");
        }
        return DimensionJson.read(dimensions, Origin.DRAWING);
    }

    String noteText() {
        return text(note);
    }

    private String neededSegment() {
        if (segment == null) {
            throw Impossible.ofField("segment", "segment is missing: the key of a segment.");
        }
        return segment;
    }

    private Stage neededStage() {
        return Stage.ofKey(text(stage))
                .orElseThrow(() -> Impossible.ofField(
                        "stage",
                        (stage == null ? "stage is missing" : "\"" + shortened(stage) + "\" is no stage") + "; it is "
                                + Stage.keys() + "."));
    }

    private static String text(@Nullable String text) {
        return Objects.requireNonNullElse(text, "");
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }
}

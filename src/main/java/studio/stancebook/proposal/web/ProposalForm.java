package studio.stancebook.proposal.web;

import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;
import studio.stancebook.proposal.ProposalChange;
import studio.stancebook.proposal.ProposalDraft;
import studio.stancebook.proposal.ProposalRules;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Stage;

/**
 * The form for a proposal or a revision as typed, but for the dimensions.
 *
 * @param segment the key of a segment
 * @param stage the key of a stage
 * @param version of the proposal that the form was filled from
 */
record ProposalForm(
        @Nullable String name,
        @Nullable String segment,
        @Nullable String stage,
        @Nullable String note,
        @Nullable Long version) {

    static ProposalForm empty(@Nullable String segment) {
        return new ProposalForm("", segment, Stage.DRAFT.key(), "", 0L);
    }

    static ProposalForm starting(String name, String segment) {
        return new ProposalForm(name, segment, Stage.DRAFT.key(), "", 0L);
    }

    static ProposalForm of(ProposalView proposal) {
        return new ProposalForm(
                proposal.name(), proposal.segment().key(), proposal.stage().key(), "", proposal.version());
    }

    ExpectedVersion expected() {
        return new ExpectedVersion(version == null ? -1 : version);
    }

    String nameText() {
        return text(name);
    }

    String segmentKey() {
        return text(segment);
    }

    String noteText() {
        return text(note).replace("\r\n", "\n");
    }

    String stageKey() {
        return text(stage);
    }

    /** @throws Impossible naming every field that cannot be accepted, those of the dimensions included */
    ProposalDraft draft(DimensionForm typed, Set<String> segments) {
        ErrorList errors = ProposalRules.errors(nameText(), noteText());
        checkSegment(segments, errors);
        DimensionSet set = dimensions(typed, errors);
        return new ProposalDraft(nameText(), segmentKey(), set, noteText());
    }

    /** @throws Impossible naming every field that cannot be accepted */
    DimensionSet revision(DimensionForm typed) {
        ErrorList errors = new ErrorList();
        ProposalRules.note(noteText()).ifPresent(errors::add);
        return dimensions(typed, errors);
    }

    /** @throws Impossible naming every field that cannot be accepted */
    ProposalChange change(Set<String> segments) {
        ErrorList errors = new ErrorList();
        ProposalRules.name(nameText()).ifPresent(errors::add);
        checkSegment(segments, errors);
        Stage read = Stage.ofKey(stageKey()).orElse(null);
        if (read == null) {
            errors.add(new FieldError("stage", "A stage is one of " + Stage.keys() + "."));
        }
        if (read == null || !errors.isEmpty()) {
            throw Impossible.of(errors);
        }
        return new ProposalChange(nameText(), segmentKey(), read);
    }

    private void checkSegment(Set<String> segments, ErrorList errors) {
        if (!segments.contains(segmentKey())) {
            errors.add(new FieldError("segment", "Choose the segment that the proposal is to be judged in."));
        }
    }

    private static DimensionSet dimensions(DimensionForm typed, ErrorList errors) {
        try {
            DimensionSet set = typed.read(Origin.DRAWING);
            if (errors.isEmpty()) {
                return set;
            }
        } catch (ImpossibleDimensions impossible) {
            errors.addAll(impossible);
        }
        throw Impossible.of(errors);
    }

    private static String text(@Nullable String typed) {
        return Objects.requireNonNullElse(typed, "").strip();
    }
}

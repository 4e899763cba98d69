package studio.stancebook.proposal.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.access.SignedIn;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;

/** What a revision would look like while it is typed. */
@Controller
class RevisionPreview {

    private final Proposals proposals;
    private final LivePreview live;

    RevisionPreview(Proposals proposals, LivePreview live) {
        this.proposals = proposals;
        this.live = live;
    }

    @PostMapping("/proposals/{id}/revise/preview")
    String preview(
            @PathVariable long id,
            @RequestParam Map<String, String> parameters,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response) {
        ProposalView proposal = proposals.forChange(id, who);
        return live.answer(subject(proposal), DimensionForm.typed(parameters), trial(proposal, who), model, response);
    }

    /** What a form shows before anything is changed, filled with a revision. */
    LiveView start(ProposalView proposal, DimensionSet filled, SignedIn who) {
        return live.view(subject(proposal), filled, trial(proposal, who).of(filled), "kept");
    }

    LiveView refused(ProposalView proposal, DimensionForm typed, SignedIn who) {
        DimensionSet newest = proposal.newest().dimensions();
        return live.refused(
                subject(proposal),
                typed,
                DimensionForm.of(newest),
                trial(proposal, who),
                () -> start(proposal, newest, who));
    }

    private LivePreview.Trial trial(ProposalView proposal, SignedIn who) {
        return dimensions -> proposals.preview(proposal.id(), dimensions, who).assessment();
    }

    private static LivePreview.Subject subject(ProposalView proposal) {
        return new LivePreview.Subject(
                proposal.name(), proposal.segment().key(), proposal.newest().assessment());
    }
}

package studio.stancebook.proposal.web;

import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.access.SignedIn;
import studio.stancebook.proposal.ProposalState;
import studio.stancebook.proposal.Proposals;

/** One proposal: the side view, what it was judged to be, and how it came to be so. */
@Controller
class ProposalPage {

    private final Proposals proposals;
    private final ProposalPageModel pages;

    ProposalPage(Proposals proposals, ProposalPageModel pages) {
        this.proposals = proposals;
        this.pages = pages;
    }

    /** The newest revision unless another is asked for. */
    @GetMapping("/proposals/{id}")
    String show(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable Integer revision,
            @AuthenticationPrincipal SignedIn who,
            Model model) {
        ProposalState state = proposals.state(id, revision, who);
        model.addAllAttributes(pages.of(state, who));
        return "proposal/proposal";
    }
}

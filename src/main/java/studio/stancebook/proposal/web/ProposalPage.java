package studio.stancebook.proposal.web;

import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;
import studio.stancebook.account.SignedIn;
import studio.stancebook.drawing.PrintedPages;
import studio.stancebook.drawing.Prints;
import studio.stancebook.proposal.ProposalRights;
import studio.stancebook.proposal.ProposalStanding;
import studio.stancebook.proposal.Proposals;

/** One proposal: the side view, what it was judged to be, and how it came to be so. */
@Controller
class ProposalPage {

    private final Proposals proposals;
    private final ProposalPageModel pages;
    private final Prints prints;
    private final PrintedPages printed;

    ProposalPage(Proposals proposals, ProposalPageModel pages, Prints prints, PrintedPages printed) {
        this.proposals = proposals;
        this.pages = pages;
        this.prints = prints;
        this.printed = printed;
    }

    /**
     * What decides on the page within its frame.
     *
     * @param changes whether the reader may change the proposal
     */
    private record Shown(ProposalStanding standing, boolean changes) {}

    /** The newest revision unless another is asked for. */
    @GetMapping("/proposals/{id}")
    View show(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable Integer revision,
            @AuthenticationPrincipal SignedIn who,
            Model model) {
        ProposalStanding standing = proposals.standing(id, revision, who);
        boolean changes = ProposalRights.changes(who, standing.ownerId());
        model.addAttribute("standing", standing);
        return printed.page(
                "proposal/page",
                prints.of(new Shown(standing, changes), "proposal/proposal", () -> pages.of(standing, changes)));
    }
}

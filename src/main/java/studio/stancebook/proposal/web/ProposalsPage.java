package studio.stancebook.proposal.web;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.RequestMapping;
import studio.stancebook.access.SignedIn;
import studio.stancebook.drawing.rendering.CachedFragment;
import studio.stancebook.proposal.ProposalFilter;
import studio.stancebook.proposal.ProposalSummary;
import studio.stancebook.proposal.ProposalThumbnails;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.Stage;

/** All proposals, and the form for a new one. */
@Controller
@RequestMapping("/proposals")
class ProposalsPage {

    private final Proposals proposals;
    private final ProposalChoices choices;
    private final ProposalThumbnails thumbnails;

    ProposalsPage(Proposals proposals, ProposalChoices choices, ProposalThumbnails thumbnails) {
        this.proposals = proposals;
        this.choices = choices;
        this.thumbnails = thumbnails;
    }

    /**
     * What the list is narrowed to; empty for any.
     *
     * @param owner the id of a person
     */
    record FilterForm(
            @Nullable String segment,
            @Nullable String stage,
            @Nullable String owner) {

        ProposalFilter filter() {
            return new ProposalFilter(
                    "",
                    blankToNull(segment),
                    Stage.ofKey(stage == null ? "" : stage).orElse(null),
                    owner != null && owner.matches("[0-9]{1,18}") ? Long.valueOf(owner) : null);
        }

        private static @Nullable String blankToNull(@Nullable String text) {
            return text == null || text.isBlank() ? null : text;
        }

        /** Whether anything is left out; public because the page asks. */
        public boolean narrows() {
            ProposalFilter filter = filter();
            return filter.segment() != null || filter.stage() != null || filter.ownerId() != null;
        }
    }

    @GetMapping
    String list(
            @ModelAttribute("filter") FilterForm filter,
            Pageable page,
            @AuthenticationPrincipal SignedIn who,
            Model model) {
        Page<ProposalSummary> found = proposals.list(filter.filter(), page, who);
        Map<Long, CachedFragment> pictures = thumbnails.of(found.getContent(), who);
        model.addAttribute("proposals", found.map(one -> ProposalLine.of(one, pictures.get(one.id()))));
        model.addAttribute("segments", choices.anySegment());
        model.addAttribute("stages", choices.allStages());
        model.addAttribute("owners", choices.anyOwner(who));
        return "proposal/proposals";
    }
}

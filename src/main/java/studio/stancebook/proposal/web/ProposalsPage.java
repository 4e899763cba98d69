package studio.stancebook.proposal.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.access.Permission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.dimension.form.ErrorLink;
import studio.stancebook.drawing.rendering.CachedFragment;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Forbidden;
import studio.stancebook.problem.Impossible;
import studio.stancebook.proposal.ProposalFilter;
import studio.stancebook.proposal.ProposalSummary;
import studio.stancebook.proposal.ProposalView;
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

    @GetMapping("/new")
    String showNew(
            @RequestParam(required = false) @Nullable String segment,
            @AuthenticationPrincipal SignedIn who,
            Model model) {
        if (!who.may(Permission.MAKE_PROPOSALS)) {
            throw new Forbidden("A viewer reads proposals but makes none.");
        }
        return newForm(ProposalForm.empty(segment), DimensionForm.blank(), FieldErrors.none(), model);
    }

    @PostMapping
    String make(
            @ModelAttribute ProposalForm form,
            @RequestParam Map<String, String> parameters,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        DimensionForm dimensions = DimensionForm.typed(parameters);
        try {
            ProposalView made =
                    proposals.make(form.draft(dimensions, choices.segments().keySet()), who);
            redirect.addFlashAttribute("notice", "proposal.done.made");
            redirect.addFlashAttribute("noticeWords", new Object[] {made.name()});
            return "redirect:/proposals/" + made.id();
        } catch (Impossible refusal) {
            response.setStatus(refusal.type().status());
            return newForm(form, dimensions, FieldErrors.of(refusal, "name"), model);
        }
    }

    private String newForm(ProposalForm form, DimensionForm dimensions, FieldErrors errors, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("segments", choices.segments());
        model.addAttribute("dimensions", dimensions.with(errors.all()));
        model.addAttribute("errors", errors);
        model.addAttribute("links", ErrorLink.of(errors.all()));
        return "proposal/new";
    }
}

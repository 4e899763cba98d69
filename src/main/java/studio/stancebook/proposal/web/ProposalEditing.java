package studio.stancebook.proposal.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.access.SignedIn;
import studio.stancebook.dimension.form.VersionRow;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Stale;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;

/** Name and segment of a proposal. */
@Controller
@RequestMapping("/proposals/{id}")
class ProposalEditing {

    private final Proposals proposals;
    private final ProposalChoices choices;
    private final MessageSource messages;

    ProposalEditing(Proposals proposals, ProposalChoices choices, MessageSource messages) {
        this.proposals = proposals;
        this.choices = choices;
        this.messages = messages;
    }

    @GetMapping("/edit")
    String show(@PathVariable long id, @AuthenticationPrincipal SignedIn who, Model model) {
        ProposalView proposal = proposals.forChange(id, who);
        return form(proposal, ProposalForm.of(proposal), FieldErrors.none(), model);
    }

    @PostMapping
    String change(
            @PathVariable long id,
            @ModelAttribute ProposalForm form,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        ProposalView now = proposals.forChange(id, who);
        try {
            ProposalView changed = proposals.change(
                    id, form.expected(), form.change(choices.segments().keySet()), who);
            redirect.addFlashAttribute("notice", "proposal.done.changed");
            redirect.addFlashAttribute("noticeWords", new Object[] {changed.name()});
            return "redirect:/proposals/" + id;
        } catch (Impossible refusal) {
            response.setStatus(refusal.type().status());
            return form(now, form, FieldErrors.of(refusal, "name"), model);
        } catch (Stale stale) {
            response.setStatus(stale.type().status());
            return conflict(proposals.forChange(id, who), form, model);
        }
    }

    private String form(ProposalView proposal, ProposalForm form, FieldErrors errors, Model model) {
        model.addAttribute("proposal", proposal);
        model.addAttribute("form", form);
        model.addAttribute("segments", choices.segments());
        model.addAttribute("errors", errors);
        return "proposal/edit";
    }

    private String conflict(ProposalView now, ProposalForm yours, Model model) {
        model.addAttribute("proposal", now);
        model.addAttribute("action", "/proposals/" + now.id());
        model.addAttribute(
                "rows",
                List.of(
                        row("name", "proposal.name", yours.nameText(), now.name()),
                        row(
                                "segment",
                                "proposal.segment",
                                yours.segmentKey(),
                                now.segment().key()),
                        row(
                                "stage",
                                "proposal.stage",
                                yours.stageKey(),
                                now.stage().key())));
        return "proposal/conflict";
    }

    private VersionRow row(String name, String label, String yours, String theirs) {
        String words = messages.getMessage(label, null, LocaleContextHolder.getLocale());
        return new VersionRow(name, words, yours, theirs);
    }
}

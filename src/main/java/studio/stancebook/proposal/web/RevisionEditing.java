package studio.stancebook.proposal.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.access.SignedIn;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.dimension.form.ErrorLink;
import studio.stancebook.dimension.form.VersionRow;
import studio.stancebook.dimension.form.VersionRows;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.ProblemType;
import studio.stancebook.problem.Stale;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;

/** The form for the next revision of a proposal, filled with the newest. */
@Controller
@RequestMapping("/proposals/{id}")
class RevisionEditing {

    private final Proposals proposals;
    private final RevisionPreview preview;
    private final MessageSource messages;

    RevisionEditing(Proposals proposals, RevisionPreview preview, MessageSource messages) {
        this.preview = preview;
        this.proposals = proposals;
        this.messages = messages;
    }

    @GetMapping("/revise")
    String show(@PathVariable long id, @AuthenticationPrincipal SignedIn who, Model model) {
        ProposalView proposal = proposals.forChange(id, who);
        DimensionForm filled = DimensionForm.of(proposal.newest().dimensions());
        preview.start(proposal, model);
        return form(proposal, ProposalForm.of(proposal), filled, FieldErrors.none(), model);
    }

    @PostMapping("/revise")
    String revise(
            @PathVariable long id,
            @ModelAttribute ProposalForm form,
            @RequestParam Map<String, String> parameters,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        ProposalView now = proposals.forChange(id, who);
        DimensionForm typed = DimensionForm.typed(parameters);
        try {
            DimensionSet dimensions = form.revision(typed);
            if (form.expected().value() != now.version()) {
                return conflict(now, form, dimensions, model, response);
            }
            ProposalView revised = proposals.revise(id, form.expected(), dimensions, form.noteText(), who);
            redirect.addFlashAttribute("notice", "proposal.done.revised");
            redirect.addFlashAttribute(
                    "noticeWords", new Object[] {revised.newest().number()});
            return "redirect:/proposals/" + id;
        } catch (Impossible refusal) {
            response.setStatus(refusal.type().status());
            preview.refused(now, typed, who, model);
            return form(now, form, typed, FieldErrors.of(refusal, "note"), model);
        } catch (Stale overtaken) {
            return conflict(proposals.forChange(id, who), form, form.revision(typed), model, response);
        }
    }

    private String form(
            ProposalView proposal, ProposalForm form, DimensionForm dimensions, FieldErrors errors, Model model) {
        model.addAttribute("proposal", proposal);
        model.addAttribute("form", form);
        model.addAttribute("dimensions", dimensions.with(errors.all()));
        model.addAttribute("errors", errors);
        model.addAttribute("links", ErrorLink.of(errors.all()));
        return "proposal/revise";
    }

    private String conflict(
            ProposalView now, ProposalForm form, DimensionSet yours, Model model, HttpServletResponse response) {
        response.setStatus(ProblemType.STALE.status());
        List<VersionRow> rows = new ArrayList<>();
        rows.add(new VersionRow(
                "note",
                words("proposal.note", new Object[0]),
                form.noteText(),
                now.newest().note()));
        rows.addAll(VersionRows.of(yours, now.newest().dimensions(), this::words));
        model.addAttribute("proposal", now);
        model.addAttribute("action", "/proposals/" + now.id() + "/revise");
        model.addAttribute("rows", rows);
        return "proposal/conflict";
    }

    private String words(String key, Object[] places) {
        return messages.getMessage(key, places, LocaleContextHolder.getLocale());
    }
}

package studio.stancebook.proposal.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
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
import studio.stancebook.dimension.reshaping.GivesWay;
import studio.stancebook.dimension.reshaping.Reshaping;
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

    /** @param revision that the form is filled with; the newest where none is named */
    @GetMapping("/revise")
    String show(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable Integer revision,
            @AuthenticationPrincipal SignedIn who,
            Model model) {
        ProposalView proposal = proposals.forChange(id, who);
        DimensionSet filled = proposals.revision(proposal, revision, who).dimensions();
        LiveView drawn = preview.start(proposal, filled, who);
        model.addAttribute("from", revision == null ? proposal.newest().number() : revision);
        return form(proposal, ProposalForm.of(proposal), DimensionForm.of(filled), FieldErrors.none(), drawn, model);
    }

    @PostMapping("/revise")
    String revise(
            @PathVariable long id,
            @ModelAttribute ProposalForm form,
            @RequestParam Map<String, String> parameters,
            @RequestParam(required = false) @Nullable Integer revision,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        ProposalView now = proposals.forChange(id, who);
        DimensionForm typed = DimensionForm.typed(parameters);
        model.addAttribute("from", revision == null ? now.newest().number() : revision);
        try {
            DimensionSet dimensions = closed(form.revision(typed), now, revision, parameters, who);
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
            return form(now, form, typed, FieldErrors.of(refusal, "note"), preview.refused(now, typed, who), model);
        } catch (Stale overtaken) {
            return conflict(proposals.forChange(id, who), form, form.revision(typed), model, response);
        }
    }

    /** The form again with its drawing, for a browser that draws nothing by itself. */
    @PostMapping(value = "/revise", params = "draw")
    String draw(
            @PathVariable long id,
            @ModelAttribute ProposalForm form,
            @RequestParam Map<String, String> parameters,
            @RequestParam(required = false) @Nullable Integer revision,
            @AuthenticationPrincipal SignedIn who,
            Model model) {
        ProposalView now = proposals.forChange(id, who);
        DimensionForm typed = DimensionForm.typed(parameters);
        model.addAttribute("from", revision == null ? now.newest().number() : revision);
        return form(now, form, typed, typed.faults(), preview.refused(now, typed, who), model);
    }

    private String form(
            ProposalView proposal,
            ProposalForm form,
            DimensionForm dimensions,
            FieldErrors errors,
            LiveView drawn,
            Model model) {
        model.addAttribute("live", drawn);
        model.addAttribute("proposal", proposal);
        model.addAttribute("form", form);
        model.addAttribute("dimensions", dimensions.with(errors.all()));
        model.addAttribute("errors", errors);
        model.addAttribute("links", ErrorLink.of(errors.all()));
        return "proposal/revise";
    }

    /** A browser without script has not been told what follows a change. */
    private DimensionSet closed(
            DimensionSet typed,
            ProposalView now,
            @Nullable Integer revision,
            Map<String, String> parameters,
            SignedIn who) {
        DimensionSet filled = proposals.revision(now, revision, who).dimensions();
        GivesWay givesWay =
                GivesWay.ofKey(parameters.getOrDefault("givesWay", "")).orElse(GivesWay.LENGTH);
        return Reshaping.typedOver(filled, typed, givesWay);
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

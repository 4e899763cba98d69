package studio.stancebook.proposal.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import org.jspecify.annotations.Nullable;
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
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.band.Assessment;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.dimension.form.ErrorLink;
import studio.stancebook.measure.MeasureChecks;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Impossible;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;

/** A new proposal: what it starts from, and the form that is filled with it. */
@Controller
@RequestMapping("/proposals")
@RequiresPermission(Permission.MAKE_PROPOSALS)
class NewProposal {

    private final Proposals proposals;
    private final ProposalChoices choices;
    private final ProposalStarts starts;
    private final StartPictures pictures;
    private final LivePreview live;

    NewProposal(
            Proposals proposals,
            ProposalChoices choices,
            ProposalStarts starts,
            StartPictures pictures,
            LivePreview live) {
        this.proposals = proposals;
        this.choices = choices;
        this.starts = starts;
        this.pictures = pictures;
        this.live = live;
    }

    @GetMapping("/new")
    String start(
            @ModelAttribute("start") StartParameters asked,
            @RequestParam(required = false) @Nullable String q,
            @AuthenticationPrincipal SignedIn who,
            Model model) {
        return startPage(asked, q == null ? "" : q, FieldErrors.none(), who, model);
    }

    @GetMapping(value = "/new", params = "from=nothing")
    String blank(@ModelAttribute("start") StartParameters asked, Model model) {
        ProposalForm form = ProposalForm.empty(asked.segmentKey());
        return form(form, DimensionForm.blank(), FieldErrors.none(), LiveView.empty(), model);
    }

    @GetMapping(
            value = "/new",
            params = {"from", "from!=nothing"})
    String filled(
            @ModelAttribute("start") StartParameters asked,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response) {
        try {
            ProposalStarts.Start start = starts.of(asked, who);
            ProposalForm form = ProposalForm.starting(start.name(), start.segment());
            DimensionSet set = start.dimensions();
            Assessment verdicts = proposals.preview(start.segment(), set, who);
            LiveView drawn = live.view(subject(form), set, verdicts, "started");
            return form(form, DimensionForm.of(set), FieldErrors.none(), drawn, model);
        } catch (Impossible refusal) {
            response.setStatus(refusal.type().status());
            return startPage(asked, "", FieldErrors.of(refusal, "tyre"), who, model);
        }
    }

    @PostMapping
    String make(
            @ModelAttribute ProposalForm form,
            @RequestParam Map<String, String> parameters,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        DimensionForm typed = DimensionForm.typed(parameters);
        try {
            ProposalView made =
                    proposals.make(form.draft(typed, choices.segments().keySet()), who);
            redirect.addFlashAttribute("notice", "proposal.done.made");
            redirect.addFlashAttribute("noticeWords", new Object[] {made.name()});
            return "redirect:/proposals/" + made.id();
        } catch (Impossible refusal) {
            response.setStatus(refusal.type().status());
            return form(form, typed, FieldErrors.of(refusal, "name"), refused(form, typed, who), model);
        }
    }

    /** The form again with its drawing, for a browser that draws nothing by itself. */
    @PostMapping(params = "draw")
    String draw(
            @ModelAttribute ProposalForm form,
            @RequestParam Map<String, String> parameters,
            @AuthenticationPrincipal SignedIn who,
            Model model) {
        DimensionForm typed = DimensionForm.typed(parameters);
        return form(form, typed, typed.faults(), refused(form, typed, who), model);
    }

    @PostMapping("/new/preview")
    String preview(
            @ModelAttribute ProposalForm form,
            @RequestParam Map<String, String> parameters,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response) {
        return live.answer(subject(form), DimensionForm.typed(parameters), trial(form, who), model, response);
    }

    private LiveView refused(ProposalForm form, DimensionForm typed, SignedIn who) {
        return live.refused(subject(form), typed, DimensionForm.blank(), trial(form, who), LiveView::empty);
    }

    private LivePreview.Trial trial(ProposalForm form, SignedIn who) {
        return dimensions -> {
            if (choices.segments().containsKey(form.segmentKey())) {
                return proposals.preview(form.segmentKey(), dimensions, who);
            }
            MeasureChecks.requireSound(dimensions);
            return null;
        };
    }

    private static LivePreview.Subject subject(ProposalForm form) {
        return new LivePreview.Subject(form.nameText(), form.segmentKey(), null);
    }

    private String startPage(StartParameters asked, String q, FieldErrors errors, SignedIn who, Model model) {
        model.addAttribute("start", asked);
        model.addAttribute("segments", choices.segments());
        model.addAttribute("typical", pictures.segments());
        model.addAttribute("q", q);
        model.addAttribute("benchmarks", pictures.benchmarks(q));
        model.addAttribute("recent", pictures.recent(who));
        model.addAttribute("errors", errors);
        return "proposal/start";
    }

    private String form(ProposalForm form, DimensionForm dimensions, FieldErrors errors, LiveView drawn, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("segments", choices.segmentsToChoose());
        model.addAttribute("dimensions", dimensions.with(errors.all()));
        model.addAttribute("errors", errors);
        model.addAttribute("links", ErrorLink.of(errors.all()));
        model.addAttribute("live", drawn);
        return "proposal/new";
    }
}

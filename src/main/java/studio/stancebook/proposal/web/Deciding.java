package studio.stancebook.proposal.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import studio.stancebook.access.Permission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.FieldErrors;
import studio.stancebook.problem.Forbidden;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Stale;
import studio.stancebook.proposal.DecisionDraft;
import studio.stancebook.proposal.Outcome;
import studio.stancebook.proposal.ProposalChange;
import studio.stancebook.proposal.ProposalRules;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.Stage;

/** Asking for a decision on a proposal, and taking it. */
@Controller
@RequestMapping("/proposals/{id}")
class Deciding {

    private final Proposals proposals;
    private final ProposalPageModel pages;

    Deciding(Proposals proposals, ProposalPageModel pages) {
        this.proposals = proposals;
        this.pages = pages;
    }

    /**
     * A decision as typed.
     *
     * @param outcome the key of an outcome
     * @param revision the newest when the page was made
     */
    record DecisionForm(
            @Nullable String outcome,
            @Nullable String reason,
            @Nullable Integer revision) {

        static DecisionForm empty() {
            return new DecisionForm(null, "", null);
        }

        /** @throws Impossible naming every field that cannot be accepted */
        DecisionDraft draft() {
            ErrorList errors = new ErrorList();
            String why = Objects.requireNonNullElse(reason, "").strip();
            Outcome read =
                    Outcome.ofKey(Objects.requireNonNullElse(outcome, "")).orElse(null);
            if (read == null) {
                errors.add(new FieldError("outcome", "Choose what is decided."));
            }
            ProposalRules.reason(why).ifPresent(errors::add);
            if (read == null || !errors.isEmpty()) {
                throw Impossible.of(errors);
            }
            return new DecisionDraft(revision == null ? 0 : revision, read, why);
        }
    }

    @PostMapping("/decision")
    String decide(
            @PathVariable long id,
            @ModelAttribute DecisionForm form,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect) {
        ProposalView now = proposals.forChange(id, who);
        if (!who.may(Permission.AGREE_TO_PROPOSALS)) {
            throw new Forbidden("Only the lead decides on proposals.");
        }
        try {
            DecisionDraft draft = form.draft();
            proposals.decide(id, draft, who);
            redirect.addFlashAttribute(
                    "notice", "proposal.done.decided." + draft.outcome().key());
            redirect.addFlashAttribute("noticeWords", new Object[] {now.name()});
            return "redirect:/proposals/" + id;
        } catch (Impossible refusal) {
            response.setStatus(refusal.type().status());
            return again(id, form, FieldErrors.of(refusal, "reason"), who, model);
        } catch (Stale stale) {
            response.setStatus(stale.type().status());
            return again(id, form, FieldErrors.of(stale, "outcome"), who, model);
        }
    }

    private String again(long id, DecisionForm form, FieldErrors errors, SignedIn who, Model model) {
        model.addAllAttributes(pages.of(proposals.state(id, null, who), who));
        model.addAttribute("decision", form);
        model.addAttribute("errors", errors);
        return "proposal/proposal";
    }

    /** What its owner does about it: asks for a decision, takes that back, puts it away, takes it up again. */
    @PostMapping("/stage")
    String move(
            @PathVariable long id,
            @RequestParam(defaultValue = "") String stage,
            @RequestParam(defaultValue = "-1") long version,
            @AuthenticationPrincipal SignedIn who,
            RedirectAttributes redirect) {
        ProposalView now = proposals.forChange(id, who);
        Stage to = Stage.ofKey(stage)
                .orElseThrow(() -> Impossible.ofField("stage", "A stage is one of " + Stage.keys() + "."));
        ProposalChange change = new ProposalChange(now.name(), now.segment().key(), to);
        proposals.change(id, new ExpectedVersion(version), change, who);
        redirect.addFlashAttribute("notice", "proposal.done.stage." + to.key());
        redirect.addFlashAttribute("noticeWords", new Object[] {now.name()});
        return "redirect:/proposals/" + id;
    }
}

package studio.stancebook.proposal.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.access.SignedIn;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.dimension.form.ErrorLink;
import studio.stancebook.problem.FieldError;
import studio.stancebook.proposal.ProposalPreview;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;

/**
 * What a revision would look like while it is typed. A form that cannot be drawn is answered with what is wrong, to stand
 * beside the last drawing that could be.
 */
@Controller
class RevisionPreview {

    private final Proposals proposals;
    private final ProposalPictures pictures;

    RevisionPreview(Proposals proposals, ProposalPictures pictures) {
        this.proposals = proposals;
        this.pictures = pictures;
    }

    @PostMapping("/proposals/{id}/revise/preview")
    String preview(
            @PathVariable long id,
            @RequestParam Map<String, String> parameters,
            @AuthenticationPrincipal SignedIn who,
            Model model,
            HttpServletResponse response) {
        try {
            DimensionSet typed = DimensionForm.typed(parameters).read(Origin.DRAWING);
            show(proposals.preview(id, typed, who), model);
            return "proposal/live :: drawn";
        } catch (ImpossibleDimensions impossible) {
            proposals.forChange(id, who);
            return wrong(impossible.errors(), model, response);
        }
    }

    private static String wrong(List<FieldError> errors, Model model, HttpServletResponse response) {
        response.setStatus(HttpServletResponse.SC_UNPROCESSABLE_CONTENT);
        response.setHeader("HX-Retarget", "#live-wrong");
        response.setHeader("HX-Reswap", "innerHTML");
        model.addAttribute("links", ErrorLink.of(errors));
        return "proposal/live :: wrong";
    }

    /** Puts what a form shows before anything is changed into the model. */
    void start(ProposalView proposal, Model model) {
        DimensionSet dimensions = proposal.newest().dimensions();
        model.addAttribute(
                "view",
                pictures.sideView(proposal.name(), dimensions, proposal.newest().assessment()));
        model.addAttribute("assessment", pictures.assessment(proposal.newest(), List.of()));
        model.addAttribute("drawn", "kept");
    }

    /** Puts what a form shows that was refused into the model: what was typed, wrong values of it as they are saved. */
    void refused(ProposalView proposal, DimensionForm typed, SignedIn who, Model model) {
        try {
            show(proposals.preview(proposal.id(), typed.read(Origin.DRAWING), who), model);
        } catch (ImpossibleDimensions impossible) {
            mended(proposal, typed, impossible, who, model);
        }
    }

    private void mended(
            ProposalView proposal, DimensionForm typed, ImpossibleDimensions wrong, SignedIn who, Model model) {
        DimensionForm saved = DimensionForm.of(proposal.newest().dimensions());
        DimensionForm mended = typed.withSaved(saved, wrong.errors());
        if (mended.typed().equals(typed.typed())) {
            start(proposal, model);
            return;
        }
        try {
            show(proposals.preview(proposal.id(), mended.read(Origin.DRAWING), who), model);
            model.addAttribute("drawn", "partly");
        } catch (ImpossibleDimensions more) {
            mended(proposal, mended, more, who, model);
        }
    }

    private void show(ProposalPreview preview, Model model) {
        ProposalView proposal = preview.proposal();
        model.addAttribute("view", pictures.sideView(proposal.name(), preview.dimensions(), preview.assessment()));
        model.addAttribute(
                "assessment",
                pictures.withoutMoves(
                        proposal.segment().key(),
                        preview.assessment(),
                        proposal.newest().assessment()));
        model.addAttribute("drawn", "typed");
    }
}

package studio.stancebook.proposal.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import studio.stancebook.band.Assessment;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.dimension.form.DrawableForm;
import studio.stancebook.dimension.form.ErrorLink;
import studio.stancebook.drawing.sideview.Handles;

/**
 * The drawing and the verdicts of dimensions that are being typed. A form that cannot be drawn is answered with what is wrong,
 * to stand beside the last drawing that could be.
 */
@Component
class LivePreview {

    private final ProposalPictures pictures;

    LivePreview(ProposalPictures pictures) {
        this.pictures = pictures;
    }

    /** Judges dimensions, or refuses them. */
    interface Trial {

        /**
         * @return null where there is no segment to judge by
         * @throws ImpossibleDimensions naming every value that cannot be
         */
        @Nullable
        Assessment of(DimensionSet dimensions);
    }

    /**
     * What is drawn.
     *
     * @param name of the proposal
     * @param segment by whose bands it is judged; empty where there is none yet
     * @param earlier assessment of what it is made from, for the fading marks
     */
    record Subject(String name, String segment, @Nullable Assessment earlier) {}

    /** The answer to a change: a part of the page. */
    String answer(Subject subject, DimensionForm typed, Trial trial, Model model, HttpServletResponse response) {
        try {
            DimensionSet dimensions = typed.read(Origin.DRAWING);
            model.addAttribute("live", view(subject, dimensions, trial.of(dimensions), "typed"));
            return "proposal/live :: drawn";
        } catch (ImpossibleDimensions impossible) {
            response.setStatus(HttpServletResponse.SC_UNPROCESSABLE_CONTENT);
            response.setHeader("HX-Retarget", "#live-wrong");
            response.setHeader("HX-Reswap", "innerHTML");
            model.addAttribute("links", ErrorLink.of(impossible.errors()));
            return "dimension/live :: wrong";
        }
    }

    LiveView view(Subject subject, DimensionSet dimensions, @Nullable Assessment assessment, String drawn) {
        List<Assessment> earlier = subject.earlier() == null ? List.of() : List.of(subject.earlier());
        return new LiveView(
                assessment == null
                        ? pictures.sideView(subject.name(), dimensions)
                        : pictures.sideView(subject.name(), dimensions, assessment),
                assessment == null ? null : pictures.withoutMoves(subject.segment(), assessment, earlier),
                Handles.of(dimensions),
                drawn);
    }

    /**
     * What a refused form shows: what was typed, wrong values of it as they were saved.
     *
     * @param saved the form as it was first shown
     * @param start what it shows when nothing of what was typed can be drawn
     */
    LiveView refused(Subject subject, DimensionForm typed, DimensionForm saved, Trial trial, Supplier<LiveView> start) {
        return DrawableForm.of(typed, saved, trial::of)
                .map(drawn -> view(subject, drawn.set(), trial.of(drawn.set()), drawn.mended() ? "partly" : "typed"))
                .orElseGet(start);
    }
}

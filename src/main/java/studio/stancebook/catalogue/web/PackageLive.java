package studio.stancebook.catalogue.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.access.Permission;
import studio.stancebook.access.RequiresPermission;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.form.DimensionForm;
import studio.stancebook.dimension.form.DrawableForm;
import studio.stancebook.dimension.form.ErrorLink;
import studio.stancebook.drawing.sideview.Handles;
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.drawing.sideview.SideViewOptions;
import studio.stancebook.measure.MeasureChecks;

/** The drawing of a package while its dimensions are typed. Nothing is kept. */
@Controller
class PackageLive {

    /**
     * What stands beside the form.
     *
     * @param view null before there is anything to draw
     * @param handles what can be pulled on it
     * @param drawn from what: {@code kept}, {@code started}, {@code typed}, {@code partly} (but for wrong values) or {@code nothing}
     */
    record PackageDrawn(@Nullable SideView view, Handles handles, String drawn) {

        static PackageDrawn empty() {
            return new PackageDrawn(null, Handles.none(), "nothing");
        }

        static PackageDrawn of(DimensionSet dimensions, String name, String drawn) {
            SideView view = SideView.of(dimensions, SideViewOptions.of("side-view", name));
            return new PackageDrawn(view, Handles.of(dimensions), drawn);
        }

        /** Of a refused form: wrong values of it as they were saved. */
        static PackageDrawn of(DimensionForm typed, DimensionForm saved, String name) {
            return DrawableForm.of(typed, saved, MeasureChecks::requireSound)
                    .map(form -> of(form.set(), name, form.mended() ? "partly" : "typed"))
                    .orElseGet(PackageDrawn::empty);
        }
    }

    @PostMapping("/packages/preview")
    @RequiresPermission(Permission.RECORD_PACKAGES)
    String preview(
            @RequestParam Map<String, String> parameters,
            @RequestParam(defaultValue = "") String name,
            Model model,
            HttpServletResponse response) {
        try {
            DimensionSet set = DimensionForm.typed(parameters).read(Origin.DRAWING);
            MeasureChecks.requireSound(set);
            model.addAttribute("live", PackageDrawn.of(set, name, "typed"));
            return "catalogue/live :: drawn";
        } catch (ImpossibleDimensions impossible) {
            response.setStatus(HttpServletResponse.SC_UNPROCESSABLE_CONTENT);
            response.setHeader("HX-Retarget", "#live-wrong");
            response.setHeader("HX-Reswap", "innerHTML");
            model.addAttribute("links", ErrorLink.of(impossible.errors()));
            return "dimension/live :: wrong";
        }
    }
}

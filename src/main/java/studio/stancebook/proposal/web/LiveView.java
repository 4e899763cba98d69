package studio.stancebook.proposal.web;

import org.jspecify.annotations.Nullable;
import studio.stancebook.drawing.sideview.Handles;
import studio.stancebook.drawing.sideview.SideView;

/**
 * What stands beside a form of dimensions.
 *
 * @param view null before there is anything to draw
 * @param assessment null where no segment is chosen to judge it by
 * @param handles what can be pulled on the drawing
 * @param drawn from what: {@code kept}, {@code started}, {@code typed}, {@code partly} (but for wrong values) or {@code nothing}
 */
record LiveView(@Nullable SideView view, @Nullable AssessmentView assessment, Handles handles, String drawn) {

    static LiveView empty() {
        return new LiveView(null, null, Handles.none(), "nothing");
    }
}

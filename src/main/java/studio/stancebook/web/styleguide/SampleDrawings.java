package studio.stancebook.web.styleguide;

import java.util.List;
import java.util.Map;
import java.util.Set;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.drawing.sideview.Alignment;
import studio.stancebook.drawing.sideview.Ghost;
import studio.stancebook.drawing.sideview.OverlayDrawing;
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.drawing.sideview.SideViewOptions;

/**
 * The drawing fragments with something in them.
 *
 * @param judged a side view with parts outside their bands and one too close to call, and a ghost behind it
 * @param stages the same vehicle from a few figures to lines, and a sketch without dimension
 * @param laidOver several vehicles over each other
 * @param thumbnails the same vehicles as in lists
 */
record SampleDrawings(SideView judged, List<CaptionedView> stages, SideView laidOver, List<Sheet> thumbnails) {

    /** A side view under the key of its caption. */
    record CaptionedView(String key, SideView view) {}

    static SampleDrawings make() {
        return new SampleDrawings(
                marked(),
                List.of(
                        stage("bare", SampleVehicle.bare()),
                        stage("landmarks", SampleVehicle.withLandmarks()),
                        stage("lines", SampleVehicle.withLines()),
                        stage("sketch", SampleVehicle.sketch())),
                OverlayDrawing.of(
                        "Dunlin and Dunlin long",
                        List.of(
                                new Ghost("Dunlin", SampleVehicle.withLandmarks()),
                                new Ghost("Dunlin long", SampleVehicle.longer())),
                        Alignment.FRONT_WHEEL,
                        false),
                List.of(
                        SideView.thumbnail(SampleVehicle.bare()),
                        SideView.thumbnail(SampleVehicle.withLandmarks()),
                        SideView.thumbnail(SampleVehicle.withLines())));
    }

    private static SideView marked() {
        SideViewOptions options = SideViewOptions.of("judged", "Dunlin")
                .withOutside(Set.of("rocker-offset-in-wheels", "approach-angle"))
                .withTooClose(Set.of("screen-aim-in-wheels"))
                .withRemarks(Map.of("rocker-offset-in-wheels", "0.02 over"))
                .withGhosts(List.of(new Ghost("Dunlin long", SampleVehicle.longer())));
        return SideView.of(SampleVehicle.withLandmarks(), options);
    }

    private static CaptionedView stage(String key, DimensionSet dimensions) {
        return new CaptionedView(key, SideView.of(dimensions, SideViewOptions.of("stage-" + key, "Dunlin")));
    }
}

package studio.stancebook.dimension;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.geometry.Point;

/** The roof as far as it is recorded: the outline where there is one, else straight lines between its landmarks. */
final class RoofLine {

    private static final List<Landmark> ALONG_THE_ROOF =
            List.of(Landmark.SCREEN_TOP, Landmark.ROOF_APEX, Landmark.BACKLIGHT_TOP);

    private final DimensionSet set;

    RoofLine(DimensionSet set) {
        this.set = set;
    }

    /** The height of the roof at {@code x}; null where nothing is recorded on both sides of it. */
    @Nullable
    Estimate heightAt(Estimate x) {
        List<Point> outline = set.points(Polyline.OUTLINE);
        return outline.isEmpty() ? ofLandmarks(x) : ofOutline(outline, x);
    }

    private @Nullable Estimate ofLandmarks(Estimate x) {
        List<Place> places = places();
        for (int i = 1; i < places.size(); i++) {
            Place from = places.get(i - 1);
            Place to = places.get(i);
            double fromX = from.x().value();
            double toX = to.x().value();
            if (fromX <= x.value() && x.value() <= toX && fromX < toX) {
                return from.heightAt(x, to);
            }
        }
        return null;
    }

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (Landmark landmark : ALONG_THE_ROOF) {
            Place place = Place.of(set, landmark);
            if (place != null) {
                places.add(place);
            }
        }
        places.sort(Comparator.comparingDouble(place -> place.x().value()));
        return places;
    }

    /** The highest crossing of the outline with the vertical at {@code x}. */
    private static @Nullable Estimate ofOutline(List<Point> outline, Estimate x) {
        Estimate highest = null;
        for (int i = 1; i < outline.size(); i++) {
            Point from = outline.get(i - 1);
            Point to = outline.get(i);
            boolean spans = Math.min(from.x(), to.x()) <= x.value() && x.value() <= Math.max(from.x(), to.x());
            if (spans && from.x() != to.x()) {
                Estimate height = onEdge(from, to, x);
                highest = highest == null || height.value() > highest.value() ? height : highest;
            }
        }
        return highest;
    }

    private static Estimate onEdge(Point from, Point to, Estimate x) {
        double slope = (to.z() - from.z()) / (to.x() - from.x());
        Estimate shiftX = Estimate.of(Variable.x(Polyline.OUTLINE), 0);
        Estimate shiftZ = Estimate.of(Variable.z(Polyline.OUTLINE), 0);
        return x.minus(Estimate.constant(from.x()))
                .minus(shiftX)
                .times(slope)
                .plus(Estimate.constant(from.z()))
                .plus(shiftZ);
    }
}

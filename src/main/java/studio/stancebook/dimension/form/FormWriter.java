package studio.stancebook.dimension.form;

import static studio.stancebook.dimension.form.DimensionForm.PREFIX;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.geometry.Point;
import studio.stancebook.quantity.NumberText;

/** Writes a dimension set as the texts of a form; lengths in mm (or units of the sketch), angles from the horizontal. */
final class FormWriter {

    /** As many decimals as {@link FormReader} keeps. */
    static final int DECIMALS = 9;

    private final DimensionSet set;

    FormWriter(DimensionSet set) {
        this.set = set;
    }

    Map<String, String> texts() {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put(FormSettings.SCALE, set.scale().key());
        texts.put(FormSettings.EDITION, set.edition().key());
        set.tyres().forEach((axle, tyre) -> texts.put(PREFIX + axle.tyreKey(), tyre.text()));
        set.scalars().forEach((dimension, value) -> texts.put(PREFIX + dimension.key(), text(value)));
        set.landmarks().forEach((landmark, point) -> {
            texts.put(PREFIX + landmark.key() + ".x", text(point.x()));
            texts.put(PREFIX + landmark.key() + ".z", text(point.z()));
        });
        set.polylines().forEach((polyline, points) -> texts.put(PREFIX + polyline.key(), lines(points)));
        set.uncertainties().forEach((key, value) -> texts.put(PREFIX + "uncertainties." + key, text(value)));
        set.origins().forEach((key, origin) -> texts.put(PREFIX + "origins." + key, origin.key()));
        return texts;
    }

    private static String lines(List<Point> points) {
        return points.stream().map(p -> text(p.x()) + " " + text(p.z())).collect(Collectors.joining("\n"));
    }

    private static String text(double value) {
        return NumberText.plain(value, DECIMALS);
    }
}

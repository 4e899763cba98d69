package studio.stancebook.dimension.form;

import static studio.stancebook.dimension.form.DimensionForm.PREFIX;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.dimension.LengthText;
import studio.stancebook.dimension.Scale;
import studio.stancebook.dimension.Unit;
import studio.stancebook.geometry.Point;
import studio.stancebook.quantity.AngleReference;
import studio.stancebook.quantity.LengthUnit;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;

/**
 * Writes a dimension set as the texts of a form, in the units of who asks; lengths of a sketch in its own. What is written is
 * read back as the value that it was written from.
 */
final class FormWriter {

    private final DimensionSet set;

    private final LengthUnit lengths;
    private final AngleReference angles;

    FormWriter(DimensionSet set) {
        this(set, ShownUnits.current().length(), ShownUnits.current().angles());
    }

    FormWriter(DimensionSet set, LengthUnit lengths, AngleReference angles) {
        this.set = set;
        this.lengths = set.scale() == Scale.UNSCALED ? LengthUnit.MM : lengths;
        this.angles = angles;
    }

    Map<String, String> texts() {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put(FormSettings.BARE_UNIT, lengths.symbol());
        texts.put(FormSettings.ANGLES_FROM, angles.key());
        texts.put(FormSettings.SCALE, set.scale().key());
        texts.put(FormSettings.EDITION, set.edition().key());
        set.tyres().forEach((axle, tyre) -> texts.put(PREFIX + axle.tyreKey(), tyre.text()));
        RearTyre.write(texts);
        set.scalars().forEach((dimension, value) -> texts.put(PREFIX + dimension.key(), text(dimension, value)));
        set.landmarks().forEach((landmark, point) -> {
            texts.put(PREFIX + landmark.key() + ".x", length(point.x()));
            texts.put(PREFIX + landmark.key() + ".z", length(point.z()));
        });
        set.polylines().forEach((polyline, points) -> texts.put(PREFIX + polyline.key(), lines(points)));
        set.uncertainties()
                .forEach((key, value) ->
                        texts.put(PREFIX + "uncertainties." + key, isLength(key) ? length(value) : text(value)));
        set.origins().forEach((key, origin) -> texts.put(PREFIX + "origins." + key, origin.key()));
        return texts;
    }

    private String lines(List<Point> points) {
        return points.stream().map(p -> length(p.x()) + " " + length(p.z())).collect(Collectors.joining("\n"));
    }

    private static boolean isLength(String key) {
        return Dimension.ofKey(key).map(Dimension::unit).orElse(Unit.MM) == Unit.MM;
    }

    private String text(Dimension dimension, double value) {
        return dimension.unit() == Unit.MM
                ? length(value)
                : text(LeaningAngles.reference(dimension.key(), angles).of(value));
    }

    private String length(double mm) {
        return lengths == LengthUnit.INCH ? LengthText.inInches(mm) : text(mm);
    }

    private static String text(double value) {
        return NumberText.plain(value, LengthText.KEPT_DECIMALS);
    }
}

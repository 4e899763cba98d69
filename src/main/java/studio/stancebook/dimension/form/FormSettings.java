package studio.stancebook.dimension.form;

import static studio.stancebook.dimension.form.DimensionForm.PREFIX;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import studio.stancebook.dimension.Edition;
import studio.stancebook.dimension.Scale;
import studio.stancebook.quantity.AngleReference;
import studio.stancebook.quantity.LengthUnit;
import studio.stancebook.quantity.ShownUnits;

/** The choices that hold for a whole form. The first of each is what holds when nothing is picked. */
final class FormSettings {

    static final String SCALE = PREFIX + "scale";
    static final String EDITION = PREFIX + "edition";
    /** The unit of lengths typed without one; not part of a dimension set. */
    static final String BARE_UNIT = PREFIX + "bareUnit";
    /** Where windscreen and backlight angles are taken from; not part of a dimension set. */
    static final String ANGLES_FROM = PREFIX + "anglesFrom";

    private static final List<String> LENGTHS = List.of(LengthUnit.MM.symbol(), LengthUnit.INCH.symbol());
    private static final List<String> ANGLES = List.of(AngleReference.HORIZONTAL.key(), AngleReference.VERTICAL.key());

    private static final List<String> SCALES = List.of(Scale.MILLIMETRES.key(), Scale.UNSCALED.key());
    private static final List<String> EDITIONS = List.of(Edition.OLDER.key(), Edition.J1100_2009.key());

    private FormSettings() {}

    static List<ChoiceEntry> of(DimensionForm form) {
        return List.of(
                setting(form, SCALE, "scale", SCALES),
                setting(form, BARE_UNIT, "bare-unit", LENGTHS),
                setting(form, ANGLES_FROM, "angles-from", ANGLES),
                setting(form, EDITION, "edition", EDITIONS));
    }

    /** The unit in which a number alone counts. */
    static LengthUnit lengths(DimensionForm form) {
        return LengthUnit.ofSymbol(form.text(BARE_UNIT)).orElse(LengthUnit.MM);
    }

    /** What windscreen and backlight angles are typed from. */
    static AngleReference angles(DimensionForm form) {
        return AngleReference.ofKey(form.text(ANGLES_FROM)).orElse(AngleReference.HORIZONTAL);
    }

    /** The texts of the settings of a form in the units of who asks. */
    static Map<String, String> asRead() {
        ShownUnits units = ShownUnits.current();
        return Map.of(
                BARE_UNIT, units.length().symbol(), ANGLES_FROM, units.angles().key());
    }

    /** Labels are message keys: {@code dimension.form.scale} and {@code dimension.form.scale.unscaled}. */
    private static ChoiceEntry setting(DimensionForm form, String name, String word, List<String> values) {
        String label = "dimension.form." + word;
        String picked = values.contains(form.text(name)) ? form.text(name) : values.get(0);
        List<ChoiceEntry.Choice> choices = new ArrayList<>();
        values.forEach(value -> choices.add(new ChoiceEntry.Choice(value, label + "." + value, value.equals(picked))));
        return new ChoiceEntry(name, label, choices, form.error(name));
    }
}

package studio.stancebook.dimension.form;

import static studio.stancebook.dimension.form.DimensionForm.PREFIX;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.dimension.Origin;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Unit;
import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.LengthUnit;
import studio.stancebook.quantity.NumberText;

/** Lays the inputs of a form out. */
final class FormSections {

    private static final String TYRE_EXAMPLE = "265/70R17";
    private static final int TYRE_PLACE = 1;

    private final DimensionForm form;
    private final LengthUnit lengths;
    private final String lengthUnit;

    FormSections(DimensionForm form) {
        this.form = form;
        this.lengths = FormSettings.lengths(form);
        this.lengthUnit = lengths.symbol();
    }

    List<Section> all() {
        List<Section> sections = new ArrayList<>();
        for (FormGroup group : FormGroup.values()) {
            sections.add(ofScalars(group));
        }
        sections.add(ofLandmarks());
        sections.add(ofPolylines());
        return sections;
    }

    private Section ofScalars(FormGroup group) {
        List<Entry> entries = new ArrayList<>();
        List<Doubt> doubts = new ArrayList<>();
        for (Dimension dimension : group.dimensions()) {
            entries.add(entry(
                    dimension.key(), label(dimension), dimension.code(), unit(dimension.unit()), accepted(dimension)));
            doubts.add(doubt(dimension.key(), label(dimension), dimension.unit()));
        }
        if (group != FormGroup.FIRST) {
            return new Section(group.key(), entries, null, List.of(), List.of(), doubts);
        }
        entries.add(TYRE_PLACE, tyre(Axle.FRONT, "Tyre, size"));
        doubts.add(TYRE_PLACE, doubt(Axle.FRONT.tyreKey(), "Front tyre, size", Unit.MM));
        doubts.add(TYRE_PLACE + 1, doubt(Axle.REAR.tyreKey(), "Rear tyre, size", Unit.MM));
        RearTyre rear = new RearTyre(RearTyre.DIFFERS, RearTyre.differs(form), tyre(Axle.REAR, "Rear tyre, size"));
        return new Section(group.key(), entries, rear, List.of(), List.of(), doubts);
    }

    private Entry tyre(Axle axle, String label) {
        return entry(axle.tyreKey(), label, "", "", TYRE_EXAMPLE);
    }

    private Section ofLandmarks() {
        List<PointEntry> points = new ArrayList<>();
        List<Doubt> doubts = new ArrayList<>();
        for (Landmark landmark : Landmark.values()) {
            String key = landmark.key();
            points.add(new PointEntry(
                    landmark.label(),
                    entry(key + ".x", landmark.label() + ", x", "", lengthUnit, ""),
                    entry(key + ".z", landmark.label() + ", z", "", lengthUnit, ""),
                    form.error(PREFIX + key)));
            doubts.add(doubt(key, landmark.label(), Unit.MM));
        }
        return new Section("landmarks", List.of(), null, points, List.of(), doubts);
    }

    private Section ofPolylines() {
        List<Entry> lines = new ArrayList<>();
        List<Doubt> doubts = new ArrayList<>();
        for (Polyline polyline : Polyline.values()) {
            String name = PREFIX + polyline.key();
            lines.add(new Entry(name, polyline.label(), "", lengthUnit, "", form.text(name), form.errorWithin(name)));
            doubts.add(doubt(polyline.key(), polyline.label(), Unit.MM));
        }
        return new Section("polylines", List.of(), null, List.of(), lines, doubts);
    }

    private Doubt doubt(String key, String label, Unit unit) {
        String name = PREFIX + "origins." + key;
        return new Doubt(
                label,
                entry("uncertainties." + key, label, "", unit(unit), ""),
                new ChoiceEntry(name, label, origins(form.text(name)), form.error(name)));
    }

    /** The first choice has no words of its own: it is the origin of the whole set. */
    private static List<ChoiceEntry.Choice> origins(String picked) {
        List<ChoiceEntry.Choice> choices = new ArrayList<>();
        choices.add(new ChoiceEntry.Choice("", "", picked.isEmpty()));
        Arrays.stream(Origin.values())
                .forEach(origin -> choices.add(new ChoiceEntry.Choice(
                        origin.key(), origin.label(), origin.key().equalsIgnoreCase(picked))));
        return choices;
    }

    private Entry entry(String key, String label, String code, String unit, String hint) {
        String name = PREFIX + key;
        return new Entry(name, label, code, unit, hint, form.text(name), form.error(name));
    }

    private String unit(Unit unit) {
        return unit == Unit.MM ? lengthUnit : unit.symbol();
    }

    /** Says what the angles of this form are from, whichever way its settings have it. */
    private String label(Dimension dimension) {
        return LeaningAngles.words(dimension.key(), dimension.label(), FormSettings.angles(form));
    }

    private String accepted(Dimension dimension) {
        if (dimension.unit() == Unit.MM) {
            return lengths.range(dimension.range(), 3);
        }
        Interval range = LeaningAngles.reference(dimension.key(), FormSettings.angles(form))
                .of(dimension.range());
        String unit =
                dimension.unit() == Unit.DEG ? "°" : " " + dimension.unit().symbol();
        return (NumberText.plain(range.lower(), 3) + " to " + NumberText.plain(range.upper(), 3) + unit).strip();
    }
}

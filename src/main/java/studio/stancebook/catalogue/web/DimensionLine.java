package studio.stancebook.catalogue.web;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Recorded;
import studio.stancebook.dimension.Scale;
import studio.stancebook.dimension.Unit;
import studio.stancebook.dimension.Variable;
import studio.stancebook.geometry.Point;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;

/**
 * One recorded value as the page of its package shows it; texts, empty where there is nothing to say.
 *
 * @param code of SAE J1100
 * @param unit of value and uncertainty
 * @param uncertainty standard uncertainty
 * @param by who set the value
 * @param at when
 * @param apart whether it is set aside from the class
 */
record DimensionLine(
        String key,
        String code,
        String name,
        String value,
        String unit,
        String uncertainty,
        String origin,
        String by,
        String at,
        boolean apart) {

    static List<DimensionLine> all(PackageView view) {
        return new Lines(view.dimensions(), view.valuesSetAside().keySet()).all();
    }

    private record Lines(DimensionSet set, Set<String> apart) {

        List<DimensionLine> all() {
            List<DimensionLine> lines = new ArrayList<>();
            Arrays.stream(Axle.values())
                    .filter(axle -> set.tyre(axle).isPresent())
                    .forEach(axle -> lines.add(tyre(axle)));
            set.scalars().forEach((dimension, value) -> lines.add(scalar(dimension, value)));
            set.landmarks().forEach((landmark, point) -> lines.add(landmark(landmark, point)));
            set.polylines().forEach((polyline, points) -> lines.add(polyline(polyline, points)));
            return lines;
        }

        private DimensionLine tyre(Axle axle) {
            var designation = set.tyre(axle).orElseThrow();
            String name = axle == Axle.FRONT ? "Front tyre" : "Rear tyre";
            String diameter = length(designation.overallDiameterMm());
            String value = designation.text() + ", \u2300 " + diameter;
            return line(axle.tyreKey(), "", name, value, Unit.MM, Variable.of(axle.tyreDiameter()));
        }

        private DimensionLine scalar(Dimension dimension, double value) {
            return line(
                    dimension.key(),
                    dimension.code(),
                    LeaningAngles.words(dimension.key(), dimension.label()),
                    dimension.unit() == Unit.MM
                            ? length(value)
                            : Formats.number(LeaningAngles.value(dimension.key(), value)),
                    dimension.unit(),
                    Variable.of(dimension));
        }

        private String length(double mm) {
            return set.scale() == Scale.UNSCALED ? Formats.number(mm) : ShownUnits.plain(mm, 2);
        }

        private static String uncertainty(double value, Unit unit) {
            return unit == Unit.MM ? ShownUnits.plain(value, 1) : NumberText.plain(value, 1);
        }

        private DimensionLine landmark(Landmark landmark, Point point) {
            String value = "x " + length(point.x()) + ", z " + length(point.z());
            return line(landmark.key(), "", landmark.label(), value, Unit.MM, Variable.x(landmark));
        }

        private DimensionLine polyline(Polyline polyline, List<Point> points) {
            String value = points.size() + " points";
            return line(polyline.key(), "", polyline.label(), value, Unit.MM, Variable.z(polyline));
        }

        private DimensionLine line(String key, String code, String name, String value, Unit unit, Variable variable) {
            Recorded mark = set.recorded().get(key);
            boolean sketch = set.scale() == Scale.UNSCALED && unit == Unit.MM;
            return new DimensionLine(
                    key,
                    code,
                    name,
                    value,
                    sketch ? "" : unit == Unit.MM ? ShownUnits.symbol() : unit.symbol(),
                    unit == Unit.COUNT || sketch ? "" : uncertainty(set.standardUncertainty(variable), unit),
                    set.originOf(key).label(),
                    mark == null ? "" : mark.by(),
                    mark == null ? "" : Formats.time(mark.at()),
                    apart.contains(key));
        }
    }
}

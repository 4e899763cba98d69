package studio.stancebook.exchange.exporting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import studio.stancebook.catalogue.IssueCause;
import studio.stancebook.catalogue.PackageIssue;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Edition;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.dimension.Scale;
import studio.stancebook.dimension.Unit;
import studio.stancebook.exchange.mapping.ColumnUnit;
import studio.stancebook.exchange.mapping.Field;
import studio.stancebook.exchange.mapping.PackedText;
import studio.stancebook.exchange.mapping.PlainNumber;
import studio.stancebook.geometry.Point;
import studio.stancebook.tyre.TyreDesignation;

/** Every column there can be, made from the definitions of dimensions, landmarks and polylines. */
final class ExportColumns {

    /** Columns that a polyline of the most points can need. */
    static final int PARTS = 9;

    private static final List<ExportColumn> ALL = new ArrayList<>();

    static {
        fields();
        for (Axle axle : Axle.values()) {
            text(
                    axle.tyreKey(),
                    view -> view.dimensions()
                            .tyre(axle)
                            .map(TyreDesignation::text)
                            .orElse(""));
        }
        for (Dimension dimension : Dimension.values()) {
            ALL.add(new ExportColumn(
                    heading(dimension.key(), dimension.unit()),
                    true,
                    dimension == Dimension.WHEELBASE,
                    view -> number(view.dimensions().scalar(dimension))));
        }
        for (Landmark landmark : Landmark.values()) {
            coordinate(landmark, "x", Point::x);
            coordinate(landmark, "z", Point::z);
        }
        for (Polyline polyline : Polyline.values()) {
            polyline(polyline);
        }
        packed();
    }

    private ExportColumns() {}

    static List<ExportColumn> all() {
        return List.copyOf(ALL);
    }

    private static void fields() {
        always(Field.NAME, PackageView::name);
        always(Field.SEGMENT, PackageView::segment);
        always(Field.SEGMENT_NAME, PackageView::segmentName);
        ALL.add(new ExportColumn(
                Field.MODEL_YEAR.key(),
                true,
                false,
                view -> view.modelYear() == null ? "" : view.modelYear().toString()));
        always(Field.ORIGIN, view -> view.origin().key());
        text(
                Field.SCALE.key(),
                view -> unless(Scale.MILLIMETRES, view.dimensions().scale(), Scale::key));
        text(
                Field.EDITION.key(),
                view -> unless(Edition.OLDER, view.dimensions().edition(), Edition::key));
    }

    private static void packed() {
        text(Field.UNCERTAINTIES.key(), view -> uncertainties(view.dimensions()));
        text(Field.ORIGINS.key(), view -> origins(view.dimensions()));
        text(
                Field.SET_ASIDE.key(),
                view -> view.setAside() == null ? "" : view.setAside().reason());
        text(Field.VALUES_SET_ASIDE.key(), view -> PackedText.lines(reasons(view)));
        text(Field.QUERIES.key(), view -> String.join("\n", questions(view)));
    }

    private static void always(Field field, Function<PackageView, String> cell) {
        ALL.add(new ExportColumn(field.key(), false, true, cell));
    }

    private static void text(String heading, Function<PackageView, String> cell) {
        ALL.add(new ExportColumn(heading, false, false, cell));
    }

    private static void coordinate(Landmark landmark, String part, ToDoubleFunction<Point> coordinate) {
        ALL.add(new ExportColumn(
                heading(landmark.key() + " " + part, Unit.MM),
                true,
                false,
                view -> view.dimensions()
                        .landmark(landmark)
                        .map(point -> PlainNumber.of(coordinate.applyAsDouble(point)))
                        .orElse("")));
    }

    private static void polyline(Polyline polyline) {
        for (int part = 0; part < PARTS; part++) {
            int index = part;
            String number = part == 0 ? "" : " " + (part + 1);
            text(heading(polyline.key() + number, Unit.MM), view -> {
                List<String> parts = PolylineCells.of(view.dimensions().points(polyline));
                return index < parts.size() ? parts.get(index) : "";
            });
        }
    }

    private static String heading(String words, Unit unit) {
        String symbol = ColumnUnit.natural(unit).key();
        return symbol.isEmpty() ? words : words + " [" + symbol + "]";
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? PlainNumber.of(value.getAsDouble()) : "";
    }

    private static <T> String unless(T usual, T value, Function<T, String> key) {
        return value.equals(usual) ? "" : key.apply(value);
    }

    private static String uncertainties(DimensionSet set) {
        Map<String, String> values = new LinkedHashMap<>();
        set.uncertainties().forEach((key, value) -> values.put(key, PlainNumber.of(value)));
        return PackedText.of(values);
    }

    private static String origins(DimensionSet set) {
        Map<String, String> values = new LinkedHashMap<>();
        set.origins().forEach((key, value) -> values.put(key, value.key()));
        return PackedText.of(values);
    }

    /** The reasons of values that are set aside, by their keys. */
    static Map<String, String> reasons(PackageView view) {
        return view.valuesSetAside().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .collect(Collectors.toMap(
                        Map.Entry::getKey, entry -> entry.getValue().reason(), (a, b) -> a, LinkedHashMap::new));
    }

    /** Open questions that came with the package; the catalogue asks all others by itself again. */
    static List<String> questions(PackageView view) {
        return view.openQueries().stream()
                .filter(query -> query.cause() == IssueCause.BROUGHT_IN)
                .map(PackageIssue::question)
                .toList();
    }
}

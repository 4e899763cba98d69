package studio.stancebook.exchange.mapping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.exchange.mapping.Target.TyrePart;

/** Every target there is, made from the definitions of dimensions, landmarks and polylines. */
public final class Targets {

    /** Both axles' tyres at once. */
    public static final String TYRE = "tyre";

    private static final List<Axle> BOTH = List.of(Axle.FRONT, Axle.REAR);
    private static final Map<String, Target> BY_ID = new LinkedHashMap<>();

    static {
        for (Field field : Field.values()) {
            add(new Target.OfField(field));
        }
        tyres(TYRE, BOTH);
        BOTH.forEach(axle -> tyres(axle.tyreKey(), List.of(axle)));
        for (Dimension dimension : Dimension.values()) {
            add(Target.OfScalar.of(dimension));
        }
        add(new Target.OfScalar(
                "tyreDiameter", BOTH.stream().map(Axle::tyreDiameter).toList()));
        add(new Target.OfScalar(
                "rimDiameter", BOTH.stream().map(Axle::rimDiameter).toList()));
        for (Landmark landmark : Landmark.values()) {
            add(new Target.OfLandmark(landmark, "x"));
            add(new Target.OfLandmark(landmark, "z"));
        }
        for (Polyline polyline : Polyline.values()) {
            for (int number = 1; number <= Target.OfPolyline.MOST; number++) {
                add(new Target.OfPolyline(polyline, number));
            }
        }
    }

    private Targets() {}

    private static void tyres(String name, List<Axle> axles) {
        for (TyrePart part : TyrePart.values()) {
            add(new Target.OfTyre(name, axles, part));
        }
    }

    private static void add(Target target) {
        BY_ID.put(target.id(), target);
    }

    /** All targets: fields, tyres, dimensions, landmarks, polylines. */
    public static List<Target> all() {
        return List.copyOf(BY_ID.values());
    }

    /** The target of an {@link Target#id()}. */
    public static Optional<Target> ofId(String id) {
        return Optional.ofNullable(BY_ID.get(id));
    }

    static Optional<Target> field(String key) {
        return ofId("field:" + key);
    }

    static Optional<Target> dimension(String key, String part) {
        return ofId("dimension:" + key + (part.isEmpty() ? "" : ":" + part));
    }

    /** The parts that a dimension's name takes; empty when there is no such name. */
    static List<String> parts(String key) {
        List<String> parts = new ArrayList<>();
        all().stream()
                .filter(target -> !target.field() && target.name().equals(key))
                .forEach(target -> parts.add(target.part()));
        return parts;
    }
}

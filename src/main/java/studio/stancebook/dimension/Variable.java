package studio.stancebook.dimension;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One number that results depend on, and that a move can change: a recorded scalar, a coordinate of a landmark, the
 * place of a whole polyline, or the diameter of tyres that are the same on both axles.
 */
public final class Variable {

    private static final List<Variable> ALL = new ArrayList<>();
    private static final Map<String, Variable> BY_KEY = new HashMap<>();
    private static final Map<Dimension, Variable> SCALARS = new EnumMap<>(Dimension.class);
    private static final Map<Landmark, Variable> LANDMARK_X = new EnumMap<>(Landmark.class);
    private static final Map<Landmark, Variable> LANDMARK_Z = new EnumMap<>(Landmark.class);
    private static final Map<Polyline, Variable> POLYLINE_X = new EnumMap<>(Polyline.class);
    private static final Map<Polyline, Variable> POLYLINE_Z = new EnumMap<>(Polyline.class);

    /** The overall diameter of all tyres, where front and rear are of one size. */
    public static final Variable TYRE_DIAMETER = add("tyreDiameter", "tyreDiameter", "Tyre diameter", Unit.MM);

    /** How far the edge of the side glass lies outside its recorded line: uncertainty only, no move. */
    public static final Variable GLASS_EDGE =
            add("daylightOpening.edge", "daylightOpening", "Edge of the side glass", Unit.MM);

    /**
     * By how much tyres give under the vehicle, as a share of their free radius: uncertainty only, no move. What is computed on
     * an unloaded tyre takes it as 0.
     */
    public static final Variable TYRE_DEFLECTION =
            add("tyreDeflection", "tyreDeflection", "Deflection of the tyres", Unit.COUNT);

    static {
        for (Dimension d : Dimension.values()) {
            SCALARS.put(d, add(d.key(), d.key(), d.label(), d.unit()));
        }
        for (Landmark l : Landmark.values()) {
            LANDMARK_X.put(l, add(l.key() + ".x", l.key(), l.label() + ", x", Unit.MM));
            LANDMARK_Z.put(l, add(l.key() + ".z", l.key(), l.label() + ", z", Unit.MM));
        }
        for (Polyline p : Polyline.values()) {
            POLYLINE_X.put(p, add(p.key() + ".x", p.key(), p.label() + ", x", Unit.MM));
            POLYLINE_Z.put(p, add(p.key() + ".z", p.key(), p.label() + ", z", Unit.MM));
        }
    }

    private final int index;
    private final String key;
    private final String valueKey;
    private final String label;
    private final Unit unit;

    private Variable(int index, String key, String valueKey, String label, Unit unit) {
        this.index = index;
        this.key = key;
        this.valueKey = valueKey;
        this.label = label;
        this.unit = unit;
    }

    private static Variable add(String key, String valueKey, String label, Unit unit) {
        Variable variable = new Variable(ALL.size(), key, valueKey, label, unit);
        ALL.add(variable);
        BY_KEY.put(key, variable);
        return variable;
    }

    /** Every variable, in the order of {@link #index()}. */
    public static List<Variable> all() {
        return List.copyOf(ALL);
    }

    public static Optional<Variable> ofKey(String key) {
        return Optional.ofNullable(BY_KEY.get(key));
    }

    static Variable at(int index) {
        return ALL.get(index);
    }

    public static Variable of(Dimension dimension) {
        return known(SCALARS, dimension);
    }

    public static Variable x(Landmark landmark) {
        return known(LANDMARK_X, landmark);
    }

    public static Variable z(Landmark landmark) {
        return known(LANDMARK_Z, landmark);
    }

    /** The whole polyline moved to the rear. */
    public static Variable x(Polyline polyline) {
        return known(POLYLINE_X, polyline);
    }

    /** The whole polyline moved up. */
    public static Variable z(Polyline polyline) {
        return known(POLYLINE_Z, polyline);
    }

    private static <K> Variable known(Map<K, Variable> variables, K key) {
        Variable variable = variables.get(key);
        if (variable == null) {
            throw new IllegalStateException("No variable for " + key);
        }
        return variable;
    }

    /** Position in {@link #all()}. */
    public int index() {
        return index;
    }

    /** The name in JSON, such as {@code wheelbase}, {@code cowl.x} or {@code underbody.z}. */
    public String key() {
        return key;
    }

    /** The JSON name of the recorded value that this is a part of: {@code cowl} for {@code cowl.x}. */
    public String valueKey() {
        return valueKey;
    }

    /** In the trade's words. */
    public String label() {
        return label;
    }

    public Unit unit() {
        return unit;
    }

    /** False for what only carries uncertainty. */
    public boolean movable() {
        return this != GLASS_EDGE && this != TYRE_DEFLECTION;
    }

    @Override
    public String toString() {
        return key;
    }
}

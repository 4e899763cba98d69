package studio.stancebook.measure;

import java.util.ArrayList;
import java.util.List;

/** The measures that every studio has. */
final class Measures {

    private static final List<Measure> BUILT_IN = builtInOrder();

    private Measures() {}

    /** In the order in which they are shown. */
    static List<Measure> builtIn() {
        return BUILT_IN;
    }

    private static List<Measure> builtInOrder() {
        List<Measure> all = new ArrayList<>(new WheelMeasures().all());
        all.addAll(new BodyMeasures().all());
        return List.copyOf(all);
    }
}

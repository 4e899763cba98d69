package studio.stancebook.dimension;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What recorded values are called in sentences for people, by their JSON names. */
public final class ValueLabels {

    private ValueLabels() {}

    /** The label of a dimension, landmark, polyline or tyre; empty for any other name. */
    public static Optional<String> of(String key) {
        return Dimension.ofKey(key)
                .map(Dimension::label)
                .or(() -> Landmark.ofKey(key).map(Landmark::label))
                .or(() -> Polyline.ofKey(key).map(Polyline::label))
                .or(() -> Arrays.stream(Axle.values())
                        .filter(axle -> axle.tyreKey().equals(key))
                        .map(axle -> axle == Axle.FRONT ? "Front tyre" : "Rear tyre")
                        .findFirst());
    }

    /** "front overhang, wheelbase and rear overhang": within a sentence. */
    static String listed(List<String> keys) {
        List<String> labels = keys.stream().map(ValueLabels::inSentence).toList();
        int last = labels.size() - 1;
        return last == 0
                ? labels.get(0)
                : labels.subList(0, last).stream().collect(Collectors.joining(", ")) + " and " + labels.get(last);
    }

    private static String inSentence(String key) {
        String label = of(key).orElse(key);
        boolean code = label.length() > 1 && !Character.isLowerCase(label.charAt(1));
        return code ? label : Character.toLowerCase(label.charAt(0)) + label.substring(1);
    }
}

package studio.stancebook.dimension.form;

import java.util.Arrays;
import java.util.List;

/** One point of a line as people write it. */
final class PointText {

    private PointText() {}

    /**
     * The parts of {@code 520 1160}, {@code 520; 1160}, {@code 520, 1160}, {@code [520, 1160]} or {@code 520,1160}. A
     * comma inside a number, as in {@code 520,5 1160}, stays with it.
     */
    static List<String> split(String line) {
        String bare = line.replaceAll("[\\[\\]()]", " ")
                .replaceAll("[,;](?=\\s|$)", " ")
                .strip();
        String separator = bare.matches("[^\\s;,]+,[^\\s;,]+") ? "," : "[\\s;]+";
        return Arrays.stream(bare.split(separator))
                .filter(part -> !part.isEmpty())
                .toList();
    }
}

package studio.stancebook.proposal.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import studio.stancebook.classes.Pair;

/** Many points as squares that are the darker the more points lie in them. */
final class Density {

    /** Side of a square in units of the chart. */
    static final int SIDE = 12;

    private static final int LEVELS = 4;

    private Density() {}

    /** Squares of one darkness. */
    record Level(String cls, String d) {}

    static List<Level> of(List<Pair> pairs, Axis x, Axis y) {
        TreeMap<Long, Integer> counts = new TreeMap<>();
        for (Pair pair : pairs) {
            long column = (long) Math.floor(x.at(pair.x()) / SIDE);
            long row = (long) Math.floor(y.at(pair.y()) / SIDE);
            counts.merge(row * 10_000 + column, 1, Integer::sum);
        }
        int most = counts.values().stream().mapToInt(Integer::intValue).max().orElse(1);
        List<StringBuilder> paths = new ArrayList<>();
        for (int i = 0; i < LEVELS; i++) {
            paths.add(new StringBuilder());
        }
        counts.forEach((cell, count) -> paths.get(level(count, most))
                .append('M')
                .append(cell % 10_000 * SIDE)
                .append(' ')
                .append(cell / 10_000 * SIDE)
                .append("h12v12h-12z"));
        List<Level> levels = new ArrayList<>();
        for (int i = 0; i < LEVELS; i++) {
            if (!paths.get(i).isEmpty()) {
                levels.add(new Level(
                        "scatter__density scatter__density--" + (i + 1),
                        paths.get(i).toString()));
            }
        }
        return levels;
    }

    /** By the logarithm of the count, so that single points are still seen beside thousands. */
    private static int level(int count, int most) {
        return most == 1 ? 0 : Math.min(LEVELS - 1, (int) (LEVELS * Math.log(count) / Math.log(most)));
    }
}

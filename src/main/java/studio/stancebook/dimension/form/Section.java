package studio.stancebook.dimension.form;

import java.util.List;

/**
 * Inputs under one heading.
 *
 * @param key ends the message key of the heading
 * @param entries single numbers and texts
 * @param points landmarks
 * @param lines polylines, one point a line
 * @param doubts uncertainty and origin of each value of the section
 */
public record Section(String key, List<Entry> entries, List<PointEntry> points, List<Entry> lines, List<Doubt> doubts) {

    public Section {
        entries = List.copyOf(entries);
        points = List.copyOf(points);
        lines = List.copyOf(lines);
        doubts = List.copyOf(doubts);
    }

    /** How many values have an uncertainty or an origin of their own. */
    public int doubtsUsed() {
        return (int) doubts.stream().filter(Doubt::used).count();
    }

    /** True when an uncertainty or origin is wrong, so that the part that holds them is shown open. */
    public boolean doubtsWrong() {
        return doubts.stream().anyMatch(Doubt::wrong);
    }
}

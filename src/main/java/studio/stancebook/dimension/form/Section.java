package studio.stancebook.dimension.form;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Inputs under one heading.
 *
 * @param key ends the message key of the heading
 * @param entries single numbers and texts
 * @param rear the tyre of the rear axle, which stands with the other one; null in other sections
 * @param points landmarks
 * @param lines polylines, one point a line
 * @param doubts uncertainty and origin of each value of the section
 */
public record Section(
        String key,
        List<Entry> entries,
        @Nullable RearTyre rear,
        List<PointEntry> points,
        List<Entry> lines,
        List<Doubt> doubts) {

    public Section {
        entries = List.copyOf(entries);
        points = List.copyOf(points);
        lines = List.copyOf(lines);
        doubts = List.copyOf(doubts);
    }

    /** Whether it holds what matters first, and is always open. */
    public boolean first() {
        return key.equals(FormGroup.FIRST.key());
    }

    /** How many of its values are typed. */
    public int filled() {
        return (int) (entries.stream().filter(entry -> !entry.value().isEmpty()).count()
                + points.stream().filter(PointEntry::filled).count()
                + lines.stream().filter(line -> !line.value().isEmpty()).count());
    }

    /** How many values it has room for. */
    public int size() {
        return entries.size() + points.size() + lines.size();
    }

    /** True when a value of it is wrong, so that it is shown open. */
    public boolean wrong() {
        return doubtsWrong()
                || entries.stream().anyMatch(Entry::wrong)
                || points.stream().anyMatch(PointEntry::wrong)
                || lines.stream().anyMatch(Entry::wrong);
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

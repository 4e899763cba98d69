package studio.stancebook.drawing;

/**
 * A path.
 *
 * @param cls its classes, the first of which names the pen, such as {@code tape} or {@code tape out}
 * @param d path data in mm
 */
public record Stroke(String cls, String d) {}

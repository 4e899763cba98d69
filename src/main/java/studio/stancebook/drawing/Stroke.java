package studio.stancebook.drawing;

import studio.stancebook.paper.Path;

/**
 * A line.
 *
 * @param cls its classes, the first of which names the pen, such as {@code tape} or {@code tape out}
 * @param path in mm, y downwards
 */
public record Stroke(String cls, Path path) {}

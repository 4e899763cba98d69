// Stand-in until the module lands: the tyre and geometry helper replaces this file.
package studio.stancebook.geometry;

public record Line(Point from, Point to) {}

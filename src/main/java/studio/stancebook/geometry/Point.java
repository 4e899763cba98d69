// Stand-in until the module lands: the tyre and geometry helper replaces this file.
package studio.stancebook.geometry;

public record Point(double x, double z) {}

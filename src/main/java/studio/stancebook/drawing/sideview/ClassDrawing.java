package studio.stancebook.drawing.sideview;

import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.paper.Path;

/**
 * The silhouettes of a class laid over each other: at the front wheel, on one ground line, all to one tyre diameter.
 *
 * @param behind grid, ground and zones
 * @param lines one for each package that can be drawn, in the order given
 * @param median on a sheet of the same extent; null where the class has none
 */
public record ClassDrawing(
        Sheet behind, List<Line> lines, @Nullable Sheet median) {

    /** How many units of the picture one tyre diameter is. */
    static final double WHEEL = 1000;

    public ClassDrawing {
        lines = List.copyOf(lines);
    }

    /** A package by its id, and the dimensions that it is drawn from. */
    public record Member(long id, Ghost ghost) {}

    /**
     * A package's silhouette.
     *
     * @param x where its name begins while it is shown
     * @param y of the base line of its name, downwards
     */
    public record Line(long id, String name, Path path, double x, double y) {}

    /**
     * Draws them. Packages without both tyres, or without anything that a silhouette could be laid through, are left out.
     *
     * @param typical what the heavy line is drawn from; null for none
     */
    public static ClassDrawing of(List<Member> members, @Nullable Ghost typical, List<ClassZone> zones) {
        return new ClassDrawingRenderer(members, typical, zones).drawing();
    }
}

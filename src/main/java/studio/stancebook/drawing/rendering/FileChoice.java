package studio.stancebook.drawing.rendering;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.drawing.Overlay;
import studio.stancebook.paper.PngWriter;
import studio.stancebook.problem.Malformed;

/**
 * How a side view is to be as a file.
 *
 * @param layers shown besides the vehicle
 * @param widthPx of a picture, and the size at which an SVG is first shown
 */
public record FileChoice(Set<Overlay> layers, int widthPx) {

    /** Width of a picture where none is asked for, px. */
    public static final int USUAL_WIDTH_PX = 1600;

    public FileChoice {
        layers = Set.copyOf(layers);
    }

    /** Everything, at the usual width. */
    public static FileChoice all() {
        return new FileChoice(Overlay.of(null), USUAL_WIDTH_PX);
    }

    /**
     * What a request asks for.
     *
     * @param layers names of layers; null for all
     * @param widthPx null for the usual one
     * @throws Malformed if there is no such layer, or the width is not one that a picture may have
     */
    public static FileChoice of(@Nullable List<String> layers, @Nullable Integer widthPx) {
        return new FileChoice(Overlay.of(layers), PngWriter.widthPx(widthPx, USUAL_WIDTH_PX));
    }
}

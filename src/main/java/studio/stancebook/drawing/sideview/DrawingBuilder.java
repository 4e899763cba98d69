package studio.stancebook.drawing.sideview;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import studio.stancebook.drawing.Disc;
import studio.stancebook.drawing.Layer;
import studio.stancebook.drawing.Overlay;
import studio.stancebook.drawing.Stroke;
import studio.stancebook.drawing.TextLine;
import studio.stancebook.geometry.Point;
import studio.stancebook.paper.Path;

/** Collects shapes by layer while a sheet is drawn. */
final class DrawingBuilder {

    private final Map<LayerId, List<Stroke>> strokes;
    private final Map<LayerId, List<Disc>> discs;
    private final Placement placement;
    private final UnaryOperator<String> pen;
    private final List<TextLine> words = new ArrayList<>();
    private final Map<Overlay, List<TextLine>> overlayWords = new EnumMap<>(Overlay.class);

    DrawingBuilder() {
        this(
                new EnumMap<>(LayerId.class),
                new EnumMap<>(LayerId.class),
                Placement.AS_RECORDED,
                UnaryOperator.identity());
    }

    private DrawingBuilder(
            Map<LayerId, List<Stroke>> strokes,
            Map<LayerId, List<Disc>> discs,
            Placement placement,
            UnaryOperator<String> pen) {
        this.strokes = strokes;
        this.discs = discs;
        this.placement = placement;
        this.pen = pen;
    }

    /** Draws lines and circles into this drawing, each where {@code placement} says and with the pen that {@code pen} makes of its own. */
    DrawingBuilder placed(Placement where, UnaryOperator<String> drawnWith) {
        return new DrawingBuilder(strokes, discs, where, drawnWith);
    }

    void stroke(LayerId layer, String cls, PathBuilder path) {
        if (!path.empty()) {
            Path placed = path.path().placed(placement.factor(), placement.shiftMm(), 0);
            strokes.computeIfAbsent(layer, l -> new ArrayList<>()).add(new Stroke(pen.apply(cls), placed));
        }
    }

    void line(LayerId layer, String cls, Point from, Point to) {
        stroke(layer, cls, new PathBuilder().moveTo(from).lineTo(to));
    }

    void disc(LayerId layer, String cls, Point centre, double radius) {
        Point at = placement.of(centre);
        discs.computeIfAbsent(layer, l -> new ArrayList<>())
                .add(new Disc(pen.apply(cls), at.x(), -at.z(), radius * placement.factor()));
    }

    void words(TextLine line) {
        words.add(line);
    }

    /** TextLine that come and go with a layer. */
    void words(Overlay overlay, TextLine line) {
        overlayWords.computeIfAbsent(overlay, o -> new ArrayList<>()).add(line);
    }

    List<Layer> layers() {
        List<Layer> layers = new ArrayList<>();
        for (LayerId id : LayerId.values()) {
            Layer layer = new Layer(
                    id.cls(),
                    strokes.getOrDefault(id, List.of()),
                    discs.getOrDefault(id, List.of()),
                    id == LayerId.WORDS ? words : List.of());
            if (!layer.empty()) {
                layers.add(layer);
            }
        }
        overlayWords.forEach(
                (overlay, lines) -> layers.add(new Layer(overlay.wordsCls(), List.of(), List.of(), lines)));
        return layers;
    }
}

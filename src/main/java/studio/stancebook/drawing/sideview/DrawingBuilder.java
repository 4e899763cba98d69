package studio.stancebook.drawing.sideview;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import studio.stancebook.drawing.Disc;
import studio.stancebook.drawing.Layer;
import studio.stancebook.drawing.Overlay;
import studio.stancebook.drawing.Stroke;
import studio.stancebook.drawing.TextLine;
import studio.stancebook.geometry.Point;

/** Collects shapes by layer while a sheet is drawn. */
final class DrawingBuilder {

    private final Map<LayerId, List<Stroke>> strokes = new EnumMap<>(LayerId.class);
    private final Map<LayerId, List<Disc>> discs = new EnumMap<>(LayerId.class);
    private final List<TextLine> words = new ArrayList<>();
    private final Map<Overlay, List<TextLine>> overlayWords = new EnumMap<>(Overlay.class);

    void stroke(LayerId layer, String cls, PathBuilder path) {
        if (!path.empty()) {
            strokes.computeIfAbsent(layer, l -> new ArrayList<>()).add(new Stroke(cls, path.path()));
        }
    }

    void line(LayerId layer, String cls, Point from, Point to) {
        stroke(layer, cls, new PathBuilder().moveTo(from).lineTo(to));
    }

    void disc(LayerId layer, String cls, Point centre, double radius) {
        discs.computeIfAbsent(layer, l -> new ArrayList<>()).add(new Disc(cls, centre.x(), -centre.z(), radius));
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

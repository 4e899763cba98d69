package studio.stancebook.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import studio.stancebook.geometry.Point;

/** Collects shapes by layer while a sheet is drawn. */
final class Film {

    /** The layers from back to front. */
    enum Leaf {
        GRID,
        WEDGES,
        RULER,
        GHOSTS,
        GUIDES,
        GROUND,
        DETAIL,
        BODY,
        WHEELS,
        MARKS,
        DIMENSIONS,
        WORDS;

        String cls() {
            return "side-view__" + name().toLowerCase(Locale.ROOT);
        }
    }

    private final Map<Leaf, List<Stroke>> strokes = new EnumMap<>(Leaf.class);
    private final Map<Leaf, List<Disc>> discs = new EnumMap<>(Leaf.class);
    private final List<Words> words = new ArrayList<>();
    private final Map<Overlay, List<Words>> overlayWords = new EnumMap<>(Overlay.class);

    void stroke(Leaf leaf, String cls, PathBuilder path) {
        if (!path.empty()) {
            strokes.computeIfAbsent(leaf, l -> new ArrayList<>()).add(new Stroke(cls, path.path()));
        }
    }

    void line(Leaf leaf, String cls, Point from, Point to) {
        stroke(leaf, cls, new PathBuilder().moveTo(from).lineTo(to));
    }

    void disc(Leaf leaf, String cls, Point centre, double radius) {
        discs.computeIfAbsent(leaf, l -> new ArrayList<>()).add(new Disc(cls, centre.x(), -centre.z(), radius));
    }

    void words(Words line) {
        words.add(line);
    }

    /** Words that come and go with a layer. */
    void words(Overlay overlay, Words line) {
        overlayWords.computeIfAbsent(overlay, o -> new ArrayList<>()).add(line);
    }

    List<Layer> layers() {
        List<Layer> layers = new ArrayList<>();
        for (Leaf leaf : Leaf.values()) {
            Layer layer = new Layer(
                    leaf.cls(),
                    strokes.getOrDefault(leaf, List.of()),
                    discs.getOrDefault(leaf, List.of()),
                    leaf == Leaf.WORDS ? words : List.of());
            if (!layer.empty()) {
                layers.add(layer);
            }
        }
        overlayWords.forEach(
                (overlay, lines) -> layers.add(new Layer(overlay.wordsCls(), List.of(), List.of(), lines)));
        return layers;
    }
}

package studio.stancebook.drawing;

import java.util.List;

/**
 * Shapes of one kind, drawn in the order strokes, discs, words.
 *
 * @param cls the class of the group
 */
public record Layer(String cls, List<Stroke> strokes, List<Disc> discs, List<TextLine> words) {

    public Layer {
        strokes = List.copyOf(strokes);
        discs = List.copyOf(discs);
        words = List.copyOf(words);
    }

    public boolean empty() {
        return strokes.isEmpty() && discs.isEmpty() && words.isEmpty();
    }
}

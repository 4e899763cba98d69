package studio.stancebook.drawing.sideview;

import java.util.List;
import java.util.Set;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.drawing.Stroke;
import studio.stancebook.paper.Path;

/** The lines of a body alone, without wheels and words, to be laid over another drawing of the same vehicle. */
public final class BodyLines {

    private BodyLines() {}

    /**
     * In mm, x from the front wheel centre rearward and y from the ground downwards. Empty where too little is recorded.
     */
    public static List<Path> of(DimensionSet dimensions) {
        Vehicle vehicle = Vehicle.of(dimensions);
        Marking unmarked = new Marking(Set.of(), Set.of());
        DrawingBuilder drawing = new DrawingBuilder();
        Silhouette silhouette = new Silhouette(vehicle, false);
        List<Silhouette.Piece> pieces = silhouette.pieces();
        pieces.forEach(piece -> drawing.stroke(LayerId.BODY, piece.pen(), piece.path()));
        new LowerBody(vehicle, silhouette, drawing, unmarked).draw(!pieces.isEmpty());
        new Cabin(vehicle, drawing, unmarked, false).draw();
        return drawing.layers().stream()
                .flatMap(layer -> layer.strokes().stream())
                .map(Stroke::path)
                .toList();
    }
}

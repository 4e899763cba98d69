package studio.stancebook.drawing.sideview;

import java.util.List;
import studio.stancebook.drawing.Phrases;

/** Says a drawing in words. */
final class Description {

    private Description() {}

    static String of(Vehicle vehicle, List<Figure> figures) {
        StringBuilder text = new StringBuilder(Phrases.of("drawing.description"));
        if (vehicle.unscaled()) {
            text.append(' ').append(Phrases.of("drawing.unscaled.sentence"));
        }
        for (Figure figure : figures) {
            text.append(' ').append(sentence(figure));
        }
        return text.toString();
    }

    private static String sentence(Figure figure) {
        String amount = figure.value().isEmpty()
                ? figure.wheels()
                : figure.wheels().isEmpty()
                        ? figure.amount()
                        : Phrases.of("drawing.description.both", figure.amount(), figure.wheels());
        String mark = figure.marked() ? ", " + Phrases.of("drawing." + figure.mark()) : "";
        return figure.name() + " " + amount + mark + ".";
    }
}

package studio.stancebook.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import studio.stancebook.quantity.NumberText;

/**
 * One picture.
 *
 * @param left x of the left edge, mm
 * @param top y of the upper edge, mm, downwards
 * @param width mm
 * @param height mm
 * @param emMm height of its lettering, mm
 * @param decimals how many its coordinates are written with
 * @param layers from back to front
 */
public record Sheet(
        double left, double top, double width, double height, double emMm, int decimals, List<Layer> layers) {

    public Sheet {
        layers = List.copyOf(layers);
    }

    /** True when a line of this pen is on the sheet. */
    public boolean has(String pen) {
        return layers.stream()
                .flatMap(layer -> layer.strokes().stream())
                .anyMatch(stroke -> stroke.cls().split(" ", -1)[0].equals(pen));
    }

    /** This sheet with only these of the layers that can be switched. */
    public Sheet with(Set<Overlay> shown) {
        List<Layer> kept = layers.stream()
                .filter(layer -> Arrays.stream(Overlay.values())
                        .allMatch(overlay -> shown.contains(overlay) || !overlay.has(layer)))
                .toList();
        return new Sheet(left, top, width, height, emMm, decimals, kept);
    }

    /** The layers that can be switched and have something on them. */
    public List<Overlay> overlays() {
        return Arrays.stream(Overlay.values())
                .filter(overlay -> layers.stream().anyMatch(overlay::has))
                .toList();
    }

    public String viewBox() {
        return NumberText.plain(left, 0) + " " + NumberText.plain(top, 0) + " " + NumberText.plain(width, 0) + " "
                + NumberText.plain(height, 0);
    }

    /** The height of the lettering as text. */
    public String em() {
        return NumberText.plain(emMm, 1);
    }
}

package studio.stancebook.web.shell;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.problem.Malformed;
import studio.stancebook.quantity.AngleReference;
import studio.stancebook.quantity.LengthUnit;
import studio.stancebook.quantity.ShownUnits;

/**
 * Keeps the unit of lengths, or what angles are read from, that somebody chose; the other one stays as it is. Both are kept in
 * one word: {@code in-vertical}.
 */
@Controller
class UnitsChoice {

    private static final String NAME = "units";

    @PostMapping("/units")
    ResponseEntity<Void> choose(
            @RequestParam(name = "length", required = false) @Nullable String length,
            @RequestParam(name = "angles", required = false) @Nullable String angles,
            @RequestParam(name = "back", defaultValue = "/") String back,
            HttpServletRequest request) {
        ShownUnits now = of(request);
        ShownUnits chosen = new ShownUnits(
                length == null ? now.length() : length(length), angles == null ? now.angles() : angles(angles));
        return Preference.keep(NAME, chosen.equals(ShownUnits.KEPT) ? "" : word(chosen), request, back);
    }

    /** Those of a request; mm and from the horizontal where it carries none, or none that there are. */
    static ShownUnits of(HttpServletRequest request) {
        return Preference.chosen(NAME, request).flatMap(UnitsChoice::read).orElse(ShownUnits.KEPT);
    }

    private static String word(ShownUnits units) {
        return units.length().symbol() + "-" + units.angles().key();
    }

    private static Optional<ShownUnits> read(String word) {
        String[] parts = word.split("-", 2);
        return parts.length < 2
                ? Optional.empty()
                : LengthUnit.ofSymbol(parts[0])
                        .flatMap(
                                length -> AngleReference.ofKey(parts[1]).map(angles -> new ShownUnits(length, angles)));
    }

    private static LengthUnit length(String symbol) {
        return LengthUnit.ofSymbol(symbol)
                .orElseThrow(() -> Malformed.ofField(
                        "length", "\"" + symbol + "\" is not a unit of lengths here: accepted are mm, in."));
    }

    private static AngleReference angles(String key) {
        return AngleReference.ofKey(key)
                .orElseThrow(() -> Malformed.ofField(
                        "angles", "Angles are not read from \"" + key + "\": accepted are horizontal, vertical."));
    }
}

package studio.stancebook.web.shell;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.edge.OwnAddress;
import studio.stancebook.problem.Malformed;
import studio.stancebook.quantity.AngleReference;
import studio.stancebook.quantity.LengthUnit;
import studio.stancebook.quantity.ShownUnits;

/** Keeps the unit of lengths, or what angles are read from, that somebody chose; the other one stays as it is. */
@Controller
class UnitsChoice {

    @PostMapping("/units")
    ResponseEntity<Void> choose(
            @RequestParam(name = "length", required = false) @Nullable String length,
            @RequestParam(name = "angles", required = false) @Nullable String angles,
            @RequestParam(name = "back", defaultValue = "/") String back,
            HttpServletRequest request) {
        ShownUnits now = UnitsCookie.of(request);
        ShownUnits chosen = new ShownUnits(
                length == null ? now.length() : length(length), angles == null ? now.angles() : angles(angles));
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .header(
                        HttpHeaders.SET_COOKIE,
                        UnitsCookie.of(chosen, request.isSecure()).toString())
                .location(URI.create(OwnAddress.of(back)))
                .build();
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

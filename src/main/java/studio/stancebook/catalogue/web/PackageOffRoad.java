package studio.stancebook.catalogue.web;

import io.swagger.v3.oas.annotations.Operation;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.measure.OffRoadAnswer;

/** How a benchmark package stands to the off-road criteria of the regulations. */
@RestController
class PackageOffRoad {

    private final Catalogue catalogue;
    private final MessageSource words;

    PackageOffRoad(Catalogue catalogue, MessageSource words) {
        this.catalogue = catalogue;
        this.words = words;
    }

    @Operation(summary = "Off-road criteria: advice from a side view, not a certificate")
    @GetMapping("/api/v1/packages/{id}/off-road")
    OffRoadAnswer judge(@PathVariable long id) {
        return OffRoadAnswer.of(catalogue.get(id).dimensions(), key -> words.getMessage(key, null, Locale.ENGLISH));
    }
}

package studio.stancebook.tyre.web;

import java.util.List;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.tyre.NearestSize;
import studio.stancebook.tyre.NearestSizes;
import studio.stancebook.tyre.TyreDesignation;

/** What a tyre size says, and which sizes come near a diameter. */
@RestController
@RequestMapping("/api/v1/tyres")
class TyreCalls {

    private static final String AVAILABILITY = "Sizes by arithmetic; whether a tyre of one is made is not known.";

    /** @param note what the list does not say */
    record NearestJson(List<NearestSizeJson> items, String note) {}

    /**
     * @param differenceMm positive when the tyre is larger than wanted
     * @param unusual true where no road tyre has such proportions
     */
    record NearestSizeJson(String designation, double overallDiameterMm, double differenceMm, boolean unusual) {

        static NearestSizeJson of(NearestSize size) {
            return new NearestSizeJson(
                    size.designation().text(), size.overallDiameterMm(), size.differenceMm(), size.unusual());
        }
    }

    @GetMapping
    TyreJson read(@RequestParam String designation) {
        return TyreJson.of(TyreDesignation.parse(designation));
    }

    @GetMapping("/nearest")
    NearestJson nearest(@RequestParam double diameterMm, @RequestParam(defaultValue = "10") int limit) {
        List<NearestSizeJson> items = NearestSizes.to(diameterMm, limit).stream()
                .map(NearestSizeJson::of)
                .toList();
        return new NearestJson(items, AVAILABILITY);
    }
}

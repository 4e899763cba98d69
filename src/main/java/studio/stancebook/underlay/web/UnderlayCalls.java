package studio.stancebook.underlay.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.SignedIn;
import studio.stancebook.drawing.rendering.DownloadName;
import studio.stancebook.limit.Bulkhead;
import studio.stancebook.paper.PdfWriter;
import studio.stancebook.paper.PngWriter;
import studio.stancebook.paper.SvgWriter;
import studio.stancebook.quantity.Interval;
import studio.stancebook.underlay.Framework;
import studio.stancebook.underlay.Proportion;
import studio.stancebook.underlay.Underlays;

/**
 * Sheets as numbers and as files. The parameters are segment or proposal; tyre or wheelbase; paper (a4 to a0); scale (1, 2,
 * 4, 5, 8, 10, 20, 40 or fit); title; and {@code at.<measure>}, a point of its band from 0 to 100.
 */
@RestController
class UnderlayCalls {

    private static final MediaType SVG = new MediaType("image", "svg+xml", StandardCharsets.UTF_8);
    private static final int USUAL_WIDTH_PX = 2400;
    private static final String PAPER = "#ffffff";

    private final Underlays underlays;
    private final Bulkhead bulkhead;

    UnderlayCalls(Underlays underlays, Bulkhead bulkhead) {
        this.underlays = underlays;
        this.bulkhead = bulkhead;
    }

    /**
     * A sheet in numbers.
     *
     * @param notDrawn names of the measures that have neither a band nor a value
     */
    record SheetJson(
            String title,
            String segment,
            String tyre,
            double tyreDiameterMm,
            double wheelbaseMm,
            double paperWidthMm,
            double paperHeightMm,
            int scale,
            List<ProportionJson> proportions,
            List<String> notDrawn) {

        static SheetJson of(Underlays.Underlay sheet) {
            Framework framework = sheet.framework();
            return new SheetJson(
                    framework.title(),
                    framework.segment(),
                    framework.tyre(),
                    framework.diameter(),
                    framework.wheelbase(),
                    sheet.page().widthMm(),
                    sheet.page().heightMm(),
                    sheet.denominator(),
                    framework.proportions().values().stream()
                            .map(proportion -> ProportionJson.of(framework, proportion))
                            .toList(),
                    framework.missing());
        }
    }

    /**
     * A proportion of a sheet.
     *
     * @param placeMm where it lies: an x from the front wheel centre rearward or a height over the ground; null for angles
     * @param lower edge of the band; null where that side is open or there is no band
     */
    record ProportionJson(
            String measure,
            String name,
            double value,
            @Nullable Double placeMm,
            String basis,
            @Nullable Double lower,
            @Nullable Double upper,
            @Nullable Integer bandVersion) {

        static ProportionJson of(Framework framework, Proportion proportion) {
            Interval band = proportion.band();
            return new ProportionJson(
                    proportion.measure(),
                    proportion.name(),
                    proportion.value(),
                    proportion.degrees()
                            ? null
                            : micrometres(framework.place(proportion.measure(), proportion.value())),
                    proportion.basis().key(),
                    band == null ? null : finite(band.lower()),
                    band == null ? null : finite(band.upper()),
                    proportion.bandVersion());
        }

        /** Without the noise of a sum in binary. */
        private static double micrometres(double mm) {
            return Math.rint(mm * 1000) / 1000;
        }

        private static @Nullable Double finite(double edge) {
            return Double.isFinite(edge) ? edge : null;
        }
    }

    @SheetParameters
    @Operation(summary = "A construction sheet in numbers")
    @GetMapping("/api/v1/underlays")
    SheetJson numbers(
            @Parameter(hidden = true) @RequestParam Map<String, String> wanted, @AuthenticationPrincipal SignedIn who) {
        return SheetJson.of(draw(wanted, who));
    }

    @SheetParameters
    @Operation(summary = "A construction sheet as SVG, true to scale")
    @GetMapping({"/underlay.svg", "/api/v1/underlays.svg"})
    ResponseEntity<String> svg(
            @Parameter(hidden = true) @RequestParam Map<String, String> wanted, @AuthenticationPrincipal SignedIn who) {
        Underlays.Underlay sheet = draw(wanted, who);
        return ResponseEntity.ok()
                .headers(name(sheet, "svg"))
                .contentType(SVG)
                .body(SvgWriter.of(sheet.page().on(PAPER)));
    }

    @SheetParameters
    @Operation(summary = "A construction sheet as PDF, true to scale")
    @GetMapping({"/underlay.pdf", "/api/v1/underlays.pdf"})
    ResponseEntity<byte[]> pdf(
            @Parameter(hidden = true) @RequestParam Map<String, String> wanted, @AuthenticationPrincipal SignedIn who) {
        Underlays.Underlay sheet = draw(wanted, who);
        return ResponseEntity.ok()
                .headers(name(sheet, "pdf"))
                .contentType(MediaType.APPLICATION_PDF)
                .body(PdfWriter.of(sheet.page()));
    }

    @SheetParameters
    @Operation(summary = "A construction sheet as PNG, 320 to 4096 px wide")
    @GetMapping({"/underlay.png", "/api/v1/underlays.png"})
    ResponseEntity<byte[]> png(
            @Parameter(hidden = true) @RequestParam Map<String, String> wanted,
            @RequestParam(required = false) @Nullable Integer width,
            @AuthenticationPrincipal SignedIn who) {
        int px = PngWriter.widthPx(width, USUAL_WIDTH_PX);
        try (Bulkhead.Place held = bulkhead.take(who.personId())) {
            Underlays.Underlay sheet = draw(wanted, who);
            return ResponseEntity.ok()
                    .headers(name(sheet, "png"))
                    .contentType(MediaType.IMAGE_PNG)
                    .body(PngWriter.of(sheet.page(), px));
        }
    }

    private static HttpHeaders name(Underlays.Underlay sheet, String extension) {
        String scale = "1-to-" + sheet.denominator();
        return DownloadName.of(extension, sheet.framework().title(), "underlay", scale)
                .header();
    }

    private Underlays.Underlay draw(Map<String, String> wanted, SignedIn who) {
        return underlays.draw(new OrderForm(wanted).order(), who);
    }
}

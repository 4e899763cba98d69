package studio.stancebook.catalogue.web;

import io.swagger.v3.oas.annotations.Operation;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.drawing.rendering.DownloadName;
import studio.stancebook.drawing.rendering.FileChoice;
import studio.stancebook.drawing.rendering.SideViewPng;
import studio.stancebook.drawing.rendering.SideViewSvg;
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.drawing.sideview.SideViewOptions;

/** The side view of a package as a file of its own. */
@Controller
class PackageDrawing {

    private static final MediaType SVG = new MediaType("image", "svg+xml", StandardCharsets.UTF_8);

    private final Catalogue catalogue;
    private final SideViewSvg drawings;

    PackageDrawing(Catalogue catalogue, SideViewSvg drawings) {
        this.catalogue = catalogue;
        this.drawings = drawings;
    }

    /** @param layers rulers, wedges, dimensions, ghosts; all when none is named, none but the vehicle for {@code vehicle} */
    @Operation(summary = "The side view of a package as SVG")
    @GetMapping({"/packages/{id}/drawing.svg", "/api/v1/packages/{id}/drawing.svg"})
    ResponseEntity<String> svg(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable List<String> layers,
            @RequestParam(required = false) @Nullable Integer width) {
        FileChoice choice = FileChoice.of(layers, width);
        PackageView view = catalogue.get(id);
        return ResponseEntity.ok()
                .headers(DownloadName.of("svg", view.title(), "side-view").header())
                .contentType(SVG)
                .body(drawings.of(of(view), choice));
    }

    @Operation(summary = "The side view of a package as PNG")
    @GetMapping({"/packages/{id}/drawing.png", "/api/v1/packages/{id}/drawing.png"})
    ResponseEntity<byte[]> png(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable List<String> layers,
            @RequestParam(required = false) @Nullable Integer width) {
        FileChoice choice = FileChoice.of(layers, width);
        PackageView view = catalogue.get(id);
        return ResponseEntity.ok()
                .headers(DownloadName.of("png", view.title(), "side-view").header())
                .contentType(MediaType.IMAGE_PNG)
                .body(SideViewPng.of(of(view), choice));
    }

    static SideView of(PackageView view) {
        return SideView.of(view.dimensions(), SideViewOptions.of("side-view", view.title()));
    }
}

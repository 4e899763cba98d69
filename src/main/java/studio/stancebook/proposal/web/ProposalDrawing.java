package studio.stancebook.proposal.web;

import io.swagger.v3.oas.annotations.Operation;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.access.SignedIn;
import studio.stancebook.drawing.rendering.DownloadName;
import studio.stancebook.drawing.rendering.FileChoice;
import studio.stancebook.drawing.rendering.SideViewPng;
import studio.stancebook.drawing.rendering.SideViewSvg;
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.RevisionView;

/** The side view of a proposal as a file of its own, with what is outside its band in red. */
@Controller
class ProposalDrawing {

    private static final MediaType SVG = new MediaType("image", "svg+xml", StandardCharsets.UTF_8);

    private final Proposals proposals;
    private final ProposalPictures pictures;
    private final SideViewSvg drawings;

    ProposalDrawing(Proposals proposals, ProposalPictures pictures, SideViewSvg drawings) {
        this.proposals = proposals;
        this.pictures = pictures;
        this.drawings = drawings;
    }

    /**
     * @param revision the newest when none is named
     * @param layers rulers, wedges, dimensions, ghosts; all when none is named, none but the vehicle for {@code vehicle}
     */
    @Operation(summary = "The side view of a proposal as SVG")
    @GetMapping({"/proposals/{id}/drawing.svg", "/api/v1/proposals/{id}/drawing.svg"})
    ResponseEntity<String> svg(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable Integer revision,
            @RequestParam(required = false) @Nullable List<String> layers,
            @RequestParam(required = false) @Nullable Integer width,
            @AuthenticationPrincipal SignedIn who) {
        FileChoice choice = FileChoice.of(layers, width);
        Shown shown = shown(id, revision, who);
        return ResponseEntity.ok()
                .headers(shown.download("svg"))
                .contentType(SVG)
                .body(drawings.of(sideView(shown), choice));
    }

    @Operation(summary = "The side view of a proposal as PNG")
    @GetMapping({"/proposals/{id}/drawing.png", "/api/v1/proposals/{id}/drawing.png"})
    ResponseEntity<byte[]> png(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable Integer revision,
            @RequestParam(required = false) @Nullable List<String> layers,
            @RequestParam(required = false) @Nullable Integer width,
            @AuthenticationPrincipal SignedIn who) {
        FileChoice choice = FileChoice.of(layers, width);
        Shown shown = shown(id, revision, who);
        return ResponseEntity.ok()
                .headers(shown.download("png"))
                .contentType(MediaType.IMAGE_PNG)
                .body(SideViewPng.of(sideView(shown), choice));
    }

    /** A revision of a proposal. */
    private record Shown(String name, RevisionView revision) {

        HttpHeaders download(String extension) {
            return DownloadName.of(extension, name, "r" + revision.number(), "side-view")
                    .header();
        }
    }

    private Shown shown(long id, @Nullable Integer revision, SignedIn who) {
        ProposalView proposal = proposals.get(id, who);
        return new Shown(proposal.name(), proposals.revision(proposal, revision, who));
    }

    private SideView sideView(Shown shown) {
        return pictures.sideView(
                shown.name(), shown.revision().dimensions(), shown.revision().assessment());
    }
}

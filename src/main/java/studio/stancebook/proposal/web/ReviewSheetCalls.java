package studio.stancebook.proposal.web;

import io.swagger.v3.oas.annotations.Operation;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import studio.stancebook.access.SignedIn;
import studio.stancebook.band.Assessment;
import studio.stancebook.drawing.rendering.DownloadName;
import studio.stancebook.paper.PdfWriter;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.RevisionView;

/** The sheet of a proposal for a review. */
@Controller
class ReviewSheetCalls {

    private final Proposals proposals;
    private final ProposalPictures pictures;
    private final MessageSource messages;
    private final Clock clock;

    ReviewSheetCalls(Proposals proposals, ProposalPictures pictures, MessageSource messages, Clock clock) {
        this.proposals = proposals;
        this.pictures = pictures;
        this.messages = messages;
        this.clock = clock;
    }

    /** @param revision the newest when none is named */
    @Operation(summary = "The review sheet of a proposal, A3 as PDF")
    @GetMapping({"/proposals/{id}/review-sheet.pdf", "/api/v1/proposals/{id}/sheet.pdf"})
    ResponseEntity<byte[]> sheet(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable Integer revision,
            @AuthenticationPrincipal SignedIn who) {
        ProposalView proposal = proposals.get(id, who);
        RevisionView shown = proposals.revision(proposal, revision, who);
        ReviewSheet sheet = new ReviewSheet(
                proposal,
                shown,
                pictures.sideView(proposal.name(), shown.dimensions(), shown.assessment()),
                pictures.assessment(shown, before(id, shown, who)),
                proposals.decision(proposal, shown.number()).orElse(null),
                messages,
                LocalDate.now(clock));
        return ResponseEntity.ok()
                .headers(DownloadName.of("pdf", proposal.name(), "r" + shown.number(), "review")
                        .header())
                .contentType(MediaType.APPLICATION_PDF)
                .body(PdfWriter.of(sheet.page()));
    }

    private List<Assessment> before(long id, RevisionView shown, SignedIn who) {
        return shown.number() == 1
                ? List.of()
                : List.of(proposals.revision(id, shown.number() - 1, who).assessment());
    }
}

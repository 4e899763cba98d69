package studio.stancebook.proposal.web;

import io.swagger.v3.oas.annotations.Operation;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.SignedIn;
import studio.stancebook.measure.OffRoadAnswer;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.RevisionView;

/** How a proposal stands to the off-road criteria of the regulations. */
@RestController
class ProposalOffRoad {

    private final Proposals proposals;
    private final MessageSource words;

    ProposalOffRoad(Proposals proposals, MessageSource words) {
        this.proposals = proposals;
        this.words = words;
    }

    /** Of the newest revision unless another is asked for. */
    @Operation(summary = "Off-road criteria: advice from a side view, not a certificate")
    @GetMapping("/api/v1/proposals/{id}/off-road")
    OffRoadAnswer judge(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable Integer revision,
            @AuthenticationPrincipal SignedIn who) {
        RevisionView wanted =
                revision == null ? proposals.get(id, who).newest() : proposals.revision(id, revision, who);
        return OffRoadAnswer.of(wanted.dimensions(), key -> words.getMessage(key, null, Locale.ENGLISH));
    }
}

package studio.stancebook.proposal.web;

import java.net.URI;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.SignedIn;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.RevisionView;

/** The revisions of a proposal and what they were judged to be. */
@RestController
@RequestMapping("/api/v1/proposals/{id}")
class RevisionCalls {

    private final Proposals proposals;

    RevisionCalls(Proposals proposals) {
        this.proposals = proposals;
    }

    /** Adds a revision; If-Match carries the version of the proposal that it was made from. */
    @PostMapping("/revisions")
    ResponseEntity<ProposalAnswers.Whole> revise(
            @PathVariable long id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody ProposalBody body,
            @AuthenticationPrincipal SignedIn who) {
        proposals.forChange(id, who);
        ExpectedVersion expected = ExpectedVersion.ofIfMatch(ifMatch);
        ProposalView revised = proposals.revise(id, expected, body.dimensionSet(), body.noteText(), who);
        String address =
                "/api/v1/proposals/" + id + "/revisions/" + revised.newest().number();
        return ResponseEntity.created(URI.create(address))
                .eTag(ExpectedVersion.tag(revised.version()))
                .body(ProposalAnswers.Whole.of(revised));
    }

    /** Newest first. */
    @GetMapping("/revisions")
    Page<ProposalAnswers.RevisionEntry> revisions(
            @PathVariable long id, Pageable page, @AuthenticationPrincipal SignedIn who) {
        return proposals.revisions(id, page, who).map(ProposalAnswers.RevisionEntry::of);
    }

    @GetMapping("/revisions/{number}")
    ProposalAnswers.Revision revision(
            @PathVariable long id, @PathVariable int number, @AuthenticationPrincipal SignedIn who) {
        return ProposalAnswers.Revision.of(proposals.revision(id, number, who));
    }

    /** The assessment as it was made, of the newest revision unless another is asked for. */
    @GetMapping("/assessment")
    ProposalAnswers.Assessed assessment(
            @PathVariable long id,
            @RequestParam(required = false) @Nullable Integer revision,
            @AuthenticationPrincipal SignedIn who) {
        RevisionView wanted =
                revision == null ? proposals.get(id, who).newest() : proposals.revision(id, revision, who);
        return ProposalAnswers.Assessed.of(wanted);
    }
}

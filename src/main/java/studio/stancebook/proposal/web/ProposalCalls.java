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
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import studio.stancebook.access.SignedIn;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.Malformed;
import studio.stancebook.proposal.ProposalFilter;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.Stage;

/** Proposals and their revisions. */
@RestController
@RequestMapping("/api/v1/proposals")
class ProposalCalls {

    private final Proposals proposals;

    ProposalCalls(Proposals proposals) {
        this.proposals = proposals;
    }

    @GetMapping
    Page<ProposalAnswers.Entry> list(
            @RequestParam(required = false) @Nullable String segment,
            @RequestParam(required = false) @Nullable String stage,
            @RequestParam(required = false) @Nullable Long owner,
            Pageable page,
            @AuthenticationPrincipal SignedIn who) {
        ProposalFilter filter = new ProposalFilter("", segment, stage == null ? null : stage(stage), owner);
        return proposals.list(filter, page, who).map(ProposalAnswers.Entry::of);
    }

    private static Stage stage(String key) {
        return Stage.ofKey(key)
                .orElseThrow(() -> Malformed.ofField("stage", "A stage is one of " + Stage.keys() + "."));
    }

    @PostMapping
    ResponseEntity<ProposalAnswers.Whole> make(@RequestBody ProposalBody body, @AuthenticationPrincipal SignedIn who) {
        ProposalView made = proposals.make(body.draft(), who);
        return ResponseEntity.created(URI.create("/api/v1/proposals/" + made.id()))
                .eTag(ExpectedVersion.tag(made.version()))
                .body(ProposalAnswers.Whole.of(made));
    }

    @GetMapping("/{id}")
    ResponseEntity<ProposalAnswers.Whole> get(@PathVariable long id, @AuthenticationPrincipal SignedIn who) {
        return answer(proposals.get(id, who));
    }

    /** Changes name, segment and stage. */
    @PutMapping("/{id}")
    ResponseEntity<ProposalAnswers.Whole> change(
            @PathVariable long id,
            @RequestHeader(name = HttpHeaders.IF_MATCH, required = false) @Nullable String ifMatch,
            @RequestBody ProposalBody body,
            @AuthenticationPrincipal SignedIn who) {
        proposals.forChange(id, who);
        ExpectedVersion expected = ExpectedVersion.ofIfMatch(ifMatch);
        return answer(proposals.change(id, expected, body.change(), who));
    }

    private static ResponseEntity<ProposalAnswers.Whole> answer(ProposalView proposal) {
        return ResponseEntity.ok()
                .eTag(ExpectedVersion.tag(proposal.version()))
                .body(ProposalAnswers.Whole.of(proposal));
    }
}

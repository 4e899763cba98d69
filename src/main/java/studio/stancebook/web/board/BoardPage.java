package studio.stancebook.web.board;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.proposal.NotableProposals;
import studio.stancebook.proposal.ProposalSummary;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.Stage;

/** The board, which shows what needs somebody and what changed. */
@Controller
class BoardPage {

    private static final int LOOKED_THROUGH = 100;
    private static final int SHOWN = 12;

    private final Proposals proposals;
    private final Catalogue catalogue;
    private final LastVisit lastVisit;

    BoardPage(Proposals proposals, Catalogue catalogue, LastVisit lastVisit) {
        this.proposals = proposals;
        this.catalogue = catalogue;
        this.lastVisit = lastVisit;
    }

    @GetMapping("/")
    String show(
            @AuthenticationPrincipal SignedIn who,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Instant since = lastVisit.before(request, response);
        NotableProposals notable = proposals.notable(LOOKED_THROUGH, SHOWN, who);
        model.addAttribute("needing", needing(notable));
        model.addAttribute("since", since);
        model.addAttribute("changes", changes(notable, since));
        return "board/board";
    }

    /** Proposals in work that lie outside a band or close to one, or are laid before the studio; the most outside first. */
    private static List<BoardProposal> needing(NotableProposals notable) {
        return notable.open().stream()
                .filter(BoardPage::needsSomeone)
                .limit(SHOWN)
                .map(BoardProposal::of)
                .toList();
    }

    private static boolean needsSomeone(ProposalSummary proposal) {
        return proposal.stage() == Stage.FOR_REVIEW || proposal.outside() > 0 || proposal.tooClose() > 0;
    }

    private List<BoardChange> changes(NotableProposals notable, Instant since) {
        Stream<BoardChange> ofProposals = notable.changed().stream().map(BoardChange::of);
        Stream<BoardChange> ofPackages = catalogue.lastChanged(SHOWN).stream().map(BoardChange::of);
        return Stream.concat(ofProposals, ofPackages)
                .filter(change -> change.at().isAfter(since))
                .sorted(Comparator.comparing(BoardChange::at).reversed())
                .limit(SHOWN)
                .toList();
    }
}

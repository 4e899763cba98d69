package studio.stancebook.web.board;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Sort;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import studio.stancebook.account.SignedIn;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.proposal.ProposalFilter;
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
        model.addAttribute("needing", needing(who));
        model.addAttribute("since", since);
        model.addAttribute("changes", changes(who, since));
        return "board/board";
    }

    /** Proposals in work that lie outside a band or close to one, or are laid before the studio; the most outside first. */
    private List<BoardProposal> needing(SignedIn who) {
        PageRequest mostOutside = PageRequest.of(0, LOOKED_THROUGH, Sort.by(Sort.Direction.DESC, "outside"));
        return proposals.list(ProposalFilter.all(), mostOutside, who).stream()
                .filter(BoardPage::needsSomeone)
                .limit(SHOWN)
                .map(BoardProposal::of)
                .toList();
    }

    private static boolean needsSomeone(ProposalSummary proposal) {
        boolean open = proposal.outside() > 0 || proposal.tooClose() > 0;
        return proposal.stage() == Stage.FOR_REVIEW || (proposal.stage() == Stage.DRAFT && open);
    }

    private List<BoardChange> changes(SignedIn who, Instant since) {
        PageRequest latest = PageRequest.of(0, SHOWN, Sort.by(Sort.Direction.DESC, "changedAt"));
        Stream<BoardChange> ofProposals =
                proposals.list(ProposalFilter.all(), latest, who).stream().map(BoardChange::of);
        Stream<BoardChange> ofPackages =
                catalogue.search(CatalogueFilter.all(), latest).stream().map(BoardChange::of);
        return Stream.concat(ofProposals, ofPackages)
                .filter(change -> change.at().isAfter(since))
                .sorted(Comparator.comparing(BoardChange::at).reversed())
                .limit(SHOWN)
                .toList();
    }
}

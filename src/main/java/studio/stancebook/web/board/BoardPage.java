package studio.stancebook.web.board;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import studio.stancebook.access.Permission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.drawing.rendering.CachedFragment;
import studio.stancebook.proposal.NotableProposals;
import studio.stancebook.proposal.ProposalSummary;
import studio.stancebook.proposal.ProposalThumbnails;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.Stage;
import studio.stancebook.proposal.WorstFinding;

/** The board: what waits for the person who looks at it, what is theirs, and what changed around them. */
@Controller
class BoardPage {

    private static final int LOOKED_THROUGH = 100;
    private static final int SHOWN = 12;
    private static final int CHANGES_LOOKED_THROUGH = 1_000;

    private final Proposals proposals;
    private final ProposalThumbnails thumbnails;
    private final Catalogue catalogue;
    private final LastVisit lastVisit;

    BoardPage(Proposals proposals, ProposalThumbnails thumbnails, Catalogue catalogue, LastVisit lastVisit) {
        this.proposals = proposals;
        this.thumbnails = thumbnails;
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
        boolean decides = who.may(Permission.AGREE_TO_PROPOSALS);
        Predicate<ProposalSummary> waits = one -> one.stage() == Stage.FOR_REVIEW;
        Predicate<ProposalSummary> own = one -> one.ownerId() == who.personId();
        Predicate<ProposalSummary> first = decides ? waits : own;
        model.addAttribute("decides", decides);
        model.addAttribute("makes", who.may(Permission.MAKE_PROPOSALS));
        addProposals(notable, first, who, model);
        model.addAttribute("since", since);
        model.addAttribute("changes", changes(notable, since));
        model.addAttribute("most", CHANGES_LOOKED_THROUGH);
        model.addAttribute("begun", !notable.changed().isEmpty());
        return "board/board";
    }

    /** Those that come first, and what else needs somebody; in both the most outside first. */
    private void addProposals(NotableProposals notable, Predicate<ProposalSummary> first, SignedIn who, Model model) {
        List<ProposalSummary> begin = chosen(notable, first);
        List<ProposalSummary> others = chosen(notable, first.negate().and(BoardPage::needsSomeone));
        List<ProposalSummary> all =
                Stream.concat(begin.stream(), others.stream()).toList();
        Map<Long, CachedFragment> pictures = thumbnails.of(all, who);
        Map<Long, WorstFinding> worst = proposals.worst(all, who);
        Function<ProposalSummary, BoardProposal> shown =
                one -> BoardProposal.of(one, worst.get(one.id()), pictures.get(one.id()));
        model.addAttribute("first", begin.stream().map(shown).toList());
        model.addAttribute("others", others.stream().map(shown).toList());
    }

    private static List<ProposalSummary> chosen(NotableProposals notable, Predicate<ProposalSummary> which) {
        return notable.open().stream().filter(which).limit(SHOWN).toList();
    }

    private static boolean needsSomeone(ProposalSummary proposal) {
        return proposal.stage() == Stage.FOR_REVIEW || proposal.outside() > 0 || proposal.tooClose() > 0;
    }

    private List<BoardChange> changes(NotableProposals notable, Instant since) {
        Stream<BoardChange> ofProposals = notable.changed().stream().map(BoardChange::of);
        Stream<BoardChange> ofPackages =
                catalogue.changedSince(since, CHANGES_LOOKED_THROUGH).stream().map(BoardChange::of);
        List<BoardChange> all = Stream.concat(ofProposals, ofPackages)
                .filter(change -> change.at().isAfter(since))
                .sorted(Comparator.comparing(BoardChange::at).reversed())
                .toList();
        return BoardChange.together(all).stream().limit(SHOWN).toList();
    }
}

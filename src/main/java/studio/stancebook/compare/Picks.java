package studio.stancebook.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Sort;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.PackageSummary;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.proposal.ProposalFilter;
import studio.stancebook.proposal.ProposalSummary;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.proposal.RevisionView;

/** Finds what is picked, and what could be, as far as the person who asks may see it. */
@Component
@Transactional(readOnly = true)
public class Picks {

    private static final int PACKAGES = 12;
    private static final int PROPOSALS = 8;

    private final Catalogue catalogue;
    private final Proposals proposals;

    Picks(Catalogue catalogue, Proposals proposals) {
        this.catalogue = catalogue;
        this.proposals = proposals;
    }

    /** Something that could be picked. */
    public record PickOption(Pick pick, String name, String segmentName) {}

    /**
     * What these name, in their order.
     *
     * @throws studio.stancebook.problem.NotFound if the person may see none of such a name
     */
    public List<Compared> find(List<Pick> picks, SignedIn who) {
        return picks.stream()
                .map(pick -> pick.proposal() ? proposal(pick, who) : benchmark(pick))
                .toList();
    }

    private Compared benchmark(Pick pick) {
        PackageView found = catalogue.get(pick.id());
        return new Compared(pick, found.title(), found.segment(), found.segmentName(), null, found.dimensions());
    }

    private Compared proposal(Pick pick, SignedIn who) {
        ProposalView found = proposals.get(pick.id(), who);
        RevisionView revision = proposals.revision(found, pick.revision(), who);
        return new Compared(
                pick,
                found.name() + ", r" + revision.number(),
                revision.segment().key(),
                revision.segment().name(),
                revision.number(),
                revision.dimensions());
    }

    /**
     * Packages, then proposals, whose name has these words; some of all without words.
     *
     * @param segment the key of the one whose packages and proposals come first; null for none
     */
    public List<PickOption> choices(String words, @Nullable String segment, SignedIn who) {
        Map<Pick, PickOption> found = new LinkedHashMap<>();
        if (segment != null) {
            packages(words, segment).forEach(one -> found.put(one.pick(), one));
        }
        packages(words, null).forEach(one -> found.putIfAbsent(one.pick(), one));
        proposals.list(ProposalFilter.named(words), PageRequest.of(0, PROPOSALS), who).stream()
                .sorted(Comparator.comparing(one -> !one.segment().key().equals(segment)))
                .map(Picks::choice)
                .forEach(one -> found.put(one.pick(), one));
        return List.copyOf(found.values());
    }

    private List<PickOption> packages(String words, @Nullable String segment) {
        CatalogueFilter filter = new CatalogueFilter(words, segment, null, null, null, null);
        List<PickOption> found = new ArrayList<>();
        for (PackageSummary one : catalogue.search(filter, PageRequest.of(0, PACKAGES, Sort.by("name")))) {
            String year = one.modelYear() == null ? "" : " (" + one.modelYear() + ")";
            found.add(new PickOption(Pick.ofPackage(one.id()), one.name() + year, one.segmentName()));
        }
        return found;
    }

    private static PickOption choice(ProposalSummary one) {
        return new PickOption(
                Pick.ofProposal(one.id()),
                one.name() + ", r" + one.revision(),
                one.segment().name());
    }
}

package studio.stancebook.proposal.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.PageRequest;
import org.springframework.data.domain.Sort;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.PackageThumbnails;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.catalogue.TypicalPackages;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.reshaping.TypicalPackage;
import studio.stancebook.drawing.rendering.CachedFragment;
import studio.stancebook.drawing.rendering.FragmentCache;
import studio.stancebook.proposal.ProposalFilter;
import studio.stancebook.proposal.ProposalSummary;
import studio.stancebook.proposal.ProposalThumbnails;
import studio.stancebook.proposal.Proposals;

/** What a proposal can start from, as pictures to choose from. */
@Component
class StartPictures {

    private static final int MOST_BENCHMARKS = 12;
    private static final int MOST_RECENT = 6;

    private final Segments segments;
    private final ClassSnapshots classes;
    private final TypicalPackages typical;
    private final Catalogue catalogue;
    private final Proposals proposals;
    private final ProposalThumbnails thumbnails;
    private final PackageThumbnails packages;
    private final FragmentCache fragments;

    StartPictures(
            Segments segments,
            ClassSnapshots classes,
            TypicalPackages typical,
            Catalogue catalogue,
            Proposals proposals,
            ProposalThumbnails thumbnails,
            PackageThumbnails packages,
            FragmentCache fragments) {
        this.segments = segments;
        this.classes = classes;
        this.typical = typical;
        this.catalogue = catalogue;
        this.proposals = proposals;
        this.thumbnails = thumbnails;
        this.packages = packages;
        this.fragments = fragments;
    }

    /**
     * One to choose.
     *
     * @param key of a segment, or id
     * @param about tyre of a segment, segment of the others
     * @param picture null where nothing can be drawn
     */
    record Choice(
            String key, String name, String about, @Nullable CachedFragment picture) {}

    /** What decides on the picture of a segment. */
    private record TypicalState(String segment, long classState) {}

    /** What is typical of each segment that has packages. */
    List<Choice> segments() {
        List<Choice> all = new ArrayList<>();
        for (SegmentName segment : segments.names()) {
            var snapshot = classes.of(segment.key());
            if (snapshot.packages() > 0) {
                typical.of(segment.key())
                        .flatMap(TypicalPackage::typical)
                        .ifPresent(set -> all.add(choice(segment, snapshot.revision(), set)));
            }
        }
        return all;
    }

    private Choice choice(SegmentName segment, long classState, DimensionSet set) {
        CachedFragment picture = fragments.thumbnail(new TypicalState(segment.key(), classState), () -> set);
        String tyre =
                set.tyres().values().stream().findFirst().map(t -> t.text()).orElse("");
        return new Choice(segment.key(), segment.name(), tyre, picture);
    }

    /** Packages whose name has this in it; none for an empty one. */
    List<Choice> benchmarks(String q) {
        CatalogueFilter filter = new CatalogueFilter(q, null, null, null, null, null);
        if (filter.words().isEmpty()) {
            return List.of();
        }
        return catalogue.search(filter, PageRequest.of(0, MOST_BENCHMARKS, Sort.by("name"))).stream()
                .map(one -> new Choice(String.valueOf(one.id()), one.name(), one.segmentName(), packages.of(one)))
                .toList();
    }

    /** The proposals that were changed last. */
    List<Choice> recent(SignedIn who) {
        List<ProposalSummary> found = proposals
                .list(ProposalFilter.all(), PageRequest.of(0, MOST_RECENT), who)
                .getContent();
        Map<Long, CachedFragment> drawn = thumbnails.of(found, who);
        return found.stream()
                .map(one -> new Choice(
                        String.valueOf(one.id()), one.name(), one.segment().name(), drawn.get(one.id())))
                .toList();
    }
}

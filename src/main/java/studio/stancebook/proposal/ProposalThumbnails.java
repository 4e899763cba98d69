package studio.stancebook.proposal;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;
import studio.stancebook.drawing.rendering.CachedFragment;
import studio.stancebook.drawing.rendering.FragmentCache;

/** The side views of listed proposals, small. */
@Component
public class ProposalThumbnails {

    private final Proposals proposals;
    private final FragmentCache fragments;

    ProposalThumbnails(Proposals proposals, FragmentCache fragments) {
        this.proposals = proposals;
        this.fragments = fragments;
    }

    /** What decides on a picture; a revision is never changed. */
    private record ThumbnailState(long id, int revision) {}

    /** By the id of the proposal; none where it was revised while the list was read. */
    public Map<Long, CachedFragment> of(List<ProposalSummary> listed, SignedIn who) {
        var dimensions = proposals.newestDimensions(listed, who);
        Map<Long, CachedFragment> pictures = new HashMap<>();
        for (ProposalSummary one : listed) {
            var drawn = dimensions.get(one.id());
            if (drawn != null) {
                pictures.put(one.id(), fragments.thumbnail(new ThumbnailState(one.id(), one.revision()), drawn));
            }
        }
        return pictures;
    }
}

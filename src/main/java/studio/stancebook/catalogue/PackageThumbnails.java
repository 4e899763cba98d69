package studio.stancebook.catalogue;

import org.springframework.stereotype.Component;
import studio.stancebook.drawing.rendering.CachedFragment;
import studio.stancebook.drawing.rendering.FragmentCache;

/** The side views of listed packages, small. */
@Component
public class PackageThumbnails {

    private final FragmentCache fragments;

    PackageThumbnails(FragmentCache fragments) {
        this.fragments = fragments;
    }

    /** What decides on a picture. */
    private record ThumbnailState(long id, long version) {}

    public CachedFragment of(PackageSummary listed) {
        return fragments.thumbnail(new ThumbnailState(listed.id(), listed.version()), listed.dimensions());
    }
}

package studio.stancebook.proposal;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.Band;
import studio.stancebook.dimension.DimensionSet;

/**
 * A revision with what is shown beside it.
 *
 * @param earlier the revisions before it, oldest first, at most {@link #MOST_EARLIER}
 * @param bands the versions that it was judged by, by measure
 * @param today what the bands in force now say of the revision, without single moves
 * @param newestRevisions of the proposal, newest first
 */
public record ShownRevision(
        RevisionView revision,
        List<Earlier> earlier,
        Map<String, Band> bands,
        Assessment today,
        List<RevisionSummary> newestRevisions) {

    /** As many as can be told apart on a strip. */
    public static final int MOST_EARLIER = 4;

    public ShownRevision {
        earlier = List.copyOf(earlier);
        newestRevisions = List.copyOf(newestRevisions);
    }

    /** The revision just before; null for the first. */
    public @Nullable Earlier before() {
        return earlier.isEmpty() ? null : earlier.get(earlier.size() - 1);
    }

    /** What a revision is held against. */
    public record Earlier(int number, DimensionSet dimensions, Assessment assessment) {}
}

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
 * @param before the revision before it; null for the first
 * @param bands in force now, by measure
 * @param today what these say of the revision, without single moves
 * @param newestRevisions of the proposal, newest first
 */
public record ShownRevision(
        RevisionView revision,
        @Nullable Earlier before,
        Map<String, Band> bands,
        Assessment today,
        List<RevisionSummary> newestRevisions) {

    public ShownRevision {
        newestRevisions = List.copyOf(newestRevisions);
    }

    /** What a revision is held against. */
    public record Earlier(int number, DimensionSet dimensions, Assessment assessment) {}
}

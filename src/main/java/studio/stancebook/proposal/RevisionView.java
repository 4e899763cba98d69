package studio.stancebook.proposal;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import studio.stancebook.band.Assessment;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.moves.SingleMove;

/**
 * One revision with the assessment that was made of it.
 *
 * @param number 1 for the first
 * @param segment whose bands it was judged by
 * @param dimensions with who set each value and when
 * @param author the name of who made it
 * @param classRevision the revision of the class at that time
 * @param assessment with the band versions of that time
 * @param moves of that time, by key of the measure: the single moves that bring it back to the edge of its band
 */
public record RevisionView(
        int number,
        SegmentName segment,
        DimensionSet dimensions,
        String note,
        String author,
        Instant at,
        long classRevision,
        Assessment assessment,
        Map<String, List<SingleMove>> moves) {

    public RevisionView {
        moves = Map.copyOf(moves);
    }

    /** The single moves of a measure; none where it is not outside, or where no single value brings it back. */
    public List<SingleMove> movesOf(String measure) {
        return moves.getOrDefault(measure, List.of());
    }
}

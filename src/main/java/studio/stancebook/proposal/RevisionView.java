package studio.stancebook.proposal;

import java.time.Instant;
import studio.stancebook.band.Assessment;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.dimension.DimensionSet;

/**
 * One revision with the assessment that was made of it.
 *
 * @param number 1 for the first
 * @param segment whose bands it was judged by
 * @param dimensions with who set each value and when
 * @param author the name of who made it
 * @param classRevision the revision of the class at that time
 * @param assessment with the band versions of that time
 */
public record RevisionView(
        int number,
        SegmentName segment,
        DimensionSet dimensions,
        String note,
        String author,
        Instant at,
        long classRevision,
        Assessment assessment) {}

package studio.stancebook.proposal;

import java.util.List;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.measure.StudioRatio;

/**
 * The state of everything that is shown of a revision of a proposal. Equal states show the same, and every change that shows
 * makes another one.
 *
 * @param version counts the changes and revisions of the proposal
 * @param name of the proposal
 * @param ownerName the owner's name now
 * @param revision the number of the revision, which itself never changes
 * @param newest the number of the newest revision
 * @param segment whose bands the revision was judged by, by its name now
 * @param classRevision how often the class of this segment has changed
 * @param bandVersions how many versions of bands this segment has had, none of which changes or goes
 * @param ratios the studio's own measures
 */
public record ProposalState(
        long id,
        long version,
        String name,
        Stage stage,
        long ownerId,
        String ownerName,
        int revision,
        int newest,
        SegmentName segment,
        long classRevision,
        long bandVersions,
        List<StudioRatio> ratios) {

    public ProposalState {
        ratios = List.copyOf(ratios);
    }
}

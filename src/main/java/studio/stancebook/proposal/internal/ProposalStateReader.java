package studio.stancebook.proposal.internal;

import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import studio.stancebook.access.Permission;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.problem.NotFound;
import studio.stancebook.proposal.ProposalState;
import studio.stancebook.proposal.Stage;
import studio.stancebook.proposal.UnknownProposal;
import studio.stancebook.proposal.UnknownRevision;

/** Reads the state of a proposal by one statement, which looks into the tables of other modules (studio decision 0050). */
@Component
public class ProposalStateReader {

    private static final String STATE =
            "SELECT p.version, p.name, p.stage, p.newest_revision, p.owner_id, o.display_name AS owner_name,"
                    + " r.number AS revision, s.id AS segment_id, s.segment_key, s.name AS segment_name,"
                    + " s.revision AS class_revision,"
                    + " (SELECT COUNT(*) FROM band_version b WHERE b.segment_id = s.id) AS band_versions"
                    + " FROM proposal p JOIN person o ON o.id = p.owner_id"
                    + " JOIN proposal_revision r ON r.proposal_id = p.id"
                    + " AND r.number = COALESCE(CAST(:revision AS INTEGER), p.newest_revision)"
                    + " JOIN segment s ON s.id = r.segment_id WHERE p.id = :id";

    private final JdbcClient database;
    private final StudioMeasures measures;
    private final ProposalReading proposals;

    ProposalStateReader(JdbcClient database, StudioMeasures measures, ProposalReading proposals) {
        this.database = database;
        this.measures = measures;
        this.proposals = proposals;
    }

    private record Found(
            long version,
            String name,
            Stage stage,
            int newestRevision,
            long ownerId,
            String ownerName,
            int revision,
            long segmentId,
            String segmentKey,
            String segmentName,
            long classRevision,
            long bandVersions) {}

    /** @param revision null for the newest */
    public ProposalState read(long id, @Nullable Integer revision, SignedIn who) {
        Found found = database.sql(STATE)
                .param("id", id)
                .param("revision", revision)
                .query(Found.class)
                .optional()
                .filter(proposal -> who.may(Permission.SEE_PROPOSALS, proposal.ownerId()))
                .orElseThrow(() -> nothing(id, revision, who));
        return new ProposalState(
                id,
                found.version(),
                found.name(),
                found.stage(),
                found.ownerId(),
                found.ownerName(),
                found.revision(),
                found.newestRevision(),
                new SegmentName(found.segmentId(), found.segmentKey(), found.segmentName()),
                found.classRevision(),
                found.bandVersions(),
                measures.ratios());
    }

    private NotFound nothing(long id, @Nullable Integer revision, SignedIn who) {
        if (revision == null) {
            return new UnknownProposal(id);
        }
        proposals.visible(id, who);
        return new UnknownRevision(revision);
    }
}

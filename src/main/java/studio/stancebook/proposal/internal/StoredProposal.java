package studio.stancebook.proposal.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Objects;
import org.hibernate.annotations.Formula;
import org.jspecify.annotations.Nullable;
import studio.stancebook.access.Author;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.proposal.ProposalSummary;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.RevisionView;
import studio.stancebook.proposal.Stage;

/** A proposal as it is kept. */
@Entity
@Table(name = "proposal")
public class StoredProposal {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Version
    private long version;

    @Column(nullable = false)
    private String name = "";

    @Column(nullable = false)
    private long segmentId;

    @Enumerated(EnumType.STRING)
    @Column(nullable = false)
    private Stage stage = Stage.DRAFT;

    @Column(nullable = false, updatable = false)
    private long ownerId;

    @Column(nullable = false)
    private int newestRevision = 1;

    @Column(nullable = false)
    private int judged;

    @Column(nullable = false)
    private int outside;

    @Column(nullable = false)
    private int tooClose;

    @Column(nullable = false)
    private boolean unscaled;

    @Column(nullable = false, updatable = false)
    private Instant createdAt = Instant.EPOCH;

    @Column(nullable = false)
    private Instant changedAt = Instant.EPOCH;

    private @Nullable Long changedById;

    @Column(nullable = false)
    private String changedBy = "";

    @Formula("COALESCE(" + Author.NAME_NOW + "changed_by_id), changed_by)")
    private String changedByNow = "";

    protected StoredProposal() {}

    StoredProposal(String name, long segmentId, SignedIn owner, Instant now) {
        this.name = name;
        this.segmentId = segmentId;
        this.ownerId = owner.personId();
        this.createdAt = now;
        touch(owner, now);
    }

    void become(String newName, long newSegmentId, Stage newStage, SignedIn who, Instant now) {
        name = newName;
        segmentId = newSegmentId;
        stage = newStage;
        touch(who, now);
    }

    void reach(StoredRevision revision, SignedIn who, Instant now) {
        newestRevision = revision.number();
        judged = revision.judged();
        outside = revision.outside();
        tooClose = revision.tooClose();
        unscaled = revision.unscaled();
        touch(who, now);
    }

    private void touch(SignedIn who, Instant now) {
        changedAt = now;
        changedById = who.personId();
        changedBy = who.name();
        changedByNow = who.name();
    }

    public long id() {
        return Objects.requireNonNull(id);
    }

    public long version() {
        return version;
    }

    String name() {
        return name;
    }

    public long ownerId() {
        return ownerId;
    }

    public long segmentId() {
        return segmentId;
    }

    public Stage stage() {
        return stage;
    }

    public int newestRevision() {
        return newestRevision;
    }

    public ProposalView view(SegmentName segment, String ownerName, RevisionView newest) {
        return new ProposalView(
                id(), version, name, segment, stage, ownerId, ownerName, newest, createdAt, changedAt, changedByNow);
    }

    public ProposalSummary summary(SegmentName segment, String ownerName) {
        return new ProposalSummary(
                id(),
                name,
                segment,
                stage,
                ownerId,
                ownerName,
                newestRevision,
                judged,
                outside,
                tooClose,
                unscaled,
                changedAt,
                changedByNow);
    }
}

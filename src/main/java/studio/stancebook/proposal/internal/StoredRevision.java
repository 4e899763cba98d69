package studio.stancebook.proposal.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import org.hibernate.annotations.Formula;
import org.jspecify.annotations.Nullable;
import studio.stancebook.access.Author;
import studio.stancebook.access.SignedIn;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.VerdictLine;
import studio.stancebook.band.VerdictLines;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Scale;
import studio.stancebook.proposal.RevisionView;
import studio.stancebook.proposal.ShownRevision;

/** A revision as it is kept; never changed. */
@Entity
@Table(name = "proposal_revision")
public class StoredRevision {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(nullable = false, updatable = false)
    private long proposalId;

    @Column(nullable = false, updatable = false)
    private int number;

    @Column(nullable = false, updatable = false)
    private long segmentId;

    @Column(nullable = false, updatable = false, length = 1000000)
    private String dimensions = "";

    @Column(nullable = false, updatable = false, length = 50000)
    private String recorded = "";

    @Column(nullable = false, updatable = false, length = 2000)
    private String note = "";

    @Column(nullable = false, updatable = false)
    private long authorId;

    @Column(nullable = false, updatable = false)
    private String authorName = "";

    @Formula(Author.NAME_NOW + "author_id)")
    private String authorNameNow = "";

    @Column(nullable = false, updatable = false)
    private Instant madeAt = Instant.EPOCH;

    @Column(nullable = false, updatable = false)
    private long classRevision;

    @Column(nullable = false, updatable = false, length = 1000000)
    private String assessment = "";

    @Column(nullable = false, updatable = false)
    private int judged;

    @Column(nullable = false, updatable = false)
    private int outside;

    @Column(nullable = false, updatable = false)
    private int tooClose;

    protected StoredRevision() {}

    StoredRevision(long proposalId, int number, DimensionSet set, String note, SignedIn author, Instant now) {
        this.proposalId = proposalId;
        this.number = number;
        this.dimensions = RevisionText.dimensions(set);
        this.recorded = RevisionText.recorded(set);
        this.note = note;
        this.authorId = author.personId();
        this.authorName = author.name();
        this.authorNameNow = author.name();
        this.madeAt = now;
    }

    void judgedBy(long inSegment, Judge.Judgement judgement) {
        Assessment found = judgement.assessment();
        segmentId = inSegment;
        classRevision = judgement.classRevision();
        assessment = RevisionText.assessment(found, judgement.moves());
        judged = found.judged();
        outside = found.outside();
        tooClose = found.tooClose();
    }

    public int number() {
        return number;
    }

    public long segmentId() {
        return segmentId;
    }

    int judged() {
        return judged;
    }

    int outside() {
        return outside;
    }

    int tooClose() {
        return tooClose;
    }

    boolean unscaled() {
        return dimensions().scale() == Scale.UNSCALED;
    }

    DimensionSet dimensions() {
        return RevisionText.readDimensions(dimensions, recorded);
    }

    private Assessment assessment() {
        return RevisionText.readAssessment(assessment);
    }

    ShownRevision.Earlier earlier() {
        return new ShownRevision.Earlier(number, dimensions(), assessment());
    }

    /** @param segment the name of {@link #segmentId()} */
    public RevisionView view(SegmentName segment) {
        List<VerdictLine> lines = RevisionText.lines(assessment);
        return new RevisionView(
                number,
                segment,
                dimensions(),
                note,
                authorNameNow,
                madeAt,
                classRevision,
                VerdictLines.read(lines),
                VerdictLines.moves(lines));
    }
}

package studio.stancebook.proposal.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import studio.stancebook.access.SignedIn;
import studio.stancebook.proposal.Decision;
import studio.stancebook.proposal.DecisionDraft;
import studio.stancebook.proposal.Outcome;

/** A decision as it is kept; never changed. */
@Entity
@Table(name = "proposal_decision")
class StoredDecision {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(nullable = false, updatable = false)
    private long proposalId;

    @Column(nullable = false, updatable = false)
    private int revision;

    @Enumerated(EnumType.STRING)
    @Column(nullable = false, updatable = false)
    private Outcome outcome = Outcome.REVISE;

    @Column(nullable = false, updatable = false)
    private String reason = "";

    @Column(nullable = false, updatable = false)
    private long decidedBy;

    @Column(nullable = false, updatable = false)
    private Instant decidedAt = Instant.EPOCH;

    protected StoredDecision() {}

    StoredDecision(long proposalId, DecisionDraft draft, SignedIn who, Instant now) {
        this.proposalId = proposalId;
        this.revision = draft.revision();
        this.outcome = draft.outcome();
        this.reason = draft.reason();
        this.decidedBy = who.personId();
        this.decidedAt = now;
    }

    long decidedBy() {
        return decidedBy;
    }

    Decision view(String by) {
        return new Decision(revision, outcome, reason, by, decidedAt);
    }
}

package studio.stancebook.catalogue.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Objects;
import org.hibernate.annotations.Formula;
import org.jspecify.annotations.Nullable;
import studio.stancebook.access.Author;
import studio.stancebook.catalogue.IssueCause;
import studio.stancebook.catalogue.PackageIssue;

/** A question about a package as it is kept. */
@Entity
@Table(name = "package_query")
public class DataIssue {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "package_query_seq")
    @SequenceGenerator(name = "package_query_seq", sequenceName = "package_query_seq", allocationSize = 50)
    private @Nullable Long id;

    @Column(nullable = false, updatable = false)
    private long packageId;

    @Enumerated(EnumType.STRING)
    @Column(nullable = false, updatable = false)
    private IssueCause cause = IssueCause.BROUGHT_IN;

    @Column(updatable = false)
    private @Nullable String valueKey;

    @Column(nullable = false)
    private String question = "";

    @Column(nullable = false, updatable = false)
    private Instant raisedAt = Instant.EPOCH;

    private @Nullable String answer;

    private @Nullable Long settledById;

    private @Nullable String settledBy;

    @Formula("COALESCE(" + Author.NAME_NOW + "settled_by_id), settled_by)")
    private @Nullable String settledByNow;

    private @Nullable Instant settledAt;

    /** The segment of the package; null once it is settled. */
    private @Nullable Long openIn;

    protected DataIssue() {}

    DataIssue(long segmentId, long packageId, RaisedIssue raised, Instant now) {
        this.openIn = segmentId;
        this.packageId = packageId;
        this.cause = raised.cause();
        this.valueKey = raised.valueKey();
        this.question = raised.question();
        this.raisedAt = now;
    }

    void settle(String withAnswer, Author by, Instant now) {
        answer = withAnswer;
        settledById = by.personId();
        settledBy = by.name();
        settledByNow = by.name();
        settledAt = now;
        openIn = null;
    }

    /** Notes that the package is in another segment. */
    void move(long segmentId) {
        openIn = open() ? segmentId : null;
    }

    void reopen(long segmentId) {
        openIn = segmentId;
        answer = null;
        settledById = null;
        settledBy = null;
        settledByNow = null;
        settledAt = null;
    }

    long id() {
        return Objects.requireNonNull(id);
    }

    long packageId() {
        return packageId;
    }

    boolean open() {
        return settledAt == null;
    }

    RaisedIssue raised() {
        return new RaisedIssue(cause, valueKey, question);
    }

    PackageIssue view() {
        PackageIssue.Settlement settlement = answer == null || settledByNow == null || settledAt == null
                ? null
                : new PackageIssue.Settlement(answer, settledByNow, settledAt);
        return new PackageIssue(id(), cause, valueKey, question, raisedAt, settlement);
    }
}

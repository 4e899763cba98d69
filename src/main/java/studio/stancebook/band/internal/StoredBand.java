package studio.stancebook.band.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Formula;
import org.jspecify.annotations.Nullable;
import studio.stancebook.access.Author;
import studio.stancebook.band.Band;
import studio.stancebook.band.BandRange;
import studio.stancebook.band.BandSetting;
import studio.stancebook.quantity.Interval;
import tools.jackson.databind.json.JsonMapper;

/** One version of a band as it is kept; never changed. */
@Entity
@Table(name = "band_version")
public class StoredBand {

    private static final JsonMapper JSON = JsonMapper.builder().build();

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private @Nullable Long id;

    @Column(nullable = false)
    private long segmentId;

    @Column(nullable = false)
    private String measure = "";

    @Column(nullable = false)
    private int version;

    @Column(nullable = false)
    private String method = WrittenSetting.NONE;

    @Column(nullable = false)
    private String setting = "";

    private @Nullable Double lowerEdge;

    private @Nullable Double upperEdge;

    private @Nullable Double lowerFrom;

    private @Nullable Double lowerTo;

    private @Nullable Double upperFrom;

    private @Nullable Double upperTo;

    @Column(nullable = false)
    private int classSize;

    @Column(nullable = false)
    private boolean provisional;

    @Column(nullable = false)
    private String explanation = "";

    @Column(nullable = false)
    private String reason = "";

    @Column(nullable = false)
    private long classRevision;

    @Column(nullable = false)
    private Instant setAt = Instant.EPOCH;

    private @Nullable Long setById;

    @Column(nullable = false)
    private String setBy = "";

    @Formula("COALESCE(" + Author.NAME_NOW + "set_by_id), set_by)")
    private String setByNow = "";

    protected StoredBand() {}

    /** A new version. */
    public StoredBand(long segmentId, Band band, Author by) {
        this.segmentId = segmentId;
        measure = band.measure();
        version = band.version();
        keepSetting(band.setting());
        keepRange(band.range());
        explanation = band.explanation();
        reason = band.reason();
        classRevision = band.classRevision();
        setAt = band.at();
        setById = by.personId();
        setBy = by.name();
        setByNow = by.name();
    }

    private void keepSetting(@Nullable BandSetting given) {
        method = given == null ? WrittenSetting.NONE : given.method().key();
        setting = JSON.writeValueAsString(given == null ? WrittenSetting.none() : WrittenSetting.of(given));
    }

    private void keepRange(@Nullable BandRange range) {
        if (range != null) {
            lowerEdge = finite(range.limits().lower());
            upperEdge = finite(range.limits().upper());
            classSize = range.n();
            provisional = range.provisional();
            Interval low = range.lowerInterval();
            Interval high = range.upperInterval();
            lowerFrom = low == null ? null : finite(low.lower());
            lowerTo = low == null ? null : finite(low.upper());
            upperFrom = high == null ? null : finite(high.lower());
            upperTo = high == null ? null : finite(high.upper());
        }
    }

    private static @Nullable Double finite(double end) {
        return Double.isInfinite(end) ? null : end;
    }

    public int version() {
        return version;
    }

    public long segmentId() {
        return segmentId;
    }

    public String measure() {
        return measure;
    }

    /** What is kept. */
    public Band band(String segment) {
        boolean inForce = !method.equals(WrittenSetting.NONE);
        return new Band(
                segment,
                measure,
                version,
                inForce ? JSON.readValue(setting, WrittenSetting.class).setting(reason) : null,
                inForce ? range() : null,
                explanation,
                reason,
                classRevision,
                setAt,
                setByNow);
    }

    private BandRange range() {
        return new BandRange(
                closed(lowerEdge, upperEdge),
                interval(lowerFrom, lowerTo),
                interval(upperFrom, upperTo),
                classSize,
                provisional);
    }

    private static @Nullable Interval interval(@Nullable Double from, @Nullable Double to) {
        return from == null && to == null ? null : closed(from, to);
    }

    /** A missing end is an open one. */
    private static Interval closed(@Nullable Double from, @Nullable Double to) {
        return new Interval(from == null ? Double.NEGATIVE_INFINITY : from, to == null ? Double.POSITIVE_INFINITY : to);
    }
}

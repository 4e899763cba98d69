package studio.stancebook.catalogue.internal;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import studio.stancebook.catalogue.PackageDraft;
import studio.stancebook.catalogue.PackageName;
import studio.stancebook.catalogue.SetAside;
import studio.stancebook.classes.ClassRow;
import studio.stancebook.classes.layout.DimensionText;
import studio.stancebook.classes.layout.NullableNumbers;
import studio.stancebook.classes.layout.ValueLayout;
import studio.stancebook.classes.layout.ValuesApart;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Origin;

/** A benchmark package as it is kept. */
@Entity
@Table(name = "benchmark_package")
public class StoredPackage {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "benchmark_package_seq")
    @SequenceGenerator(name = "benchmark_package_seq", sequenceName = "benchmark_package_seq", allocationSize = 50)
    private @Nullable Long id;

    @Version
    private long version;

    @ManyToOne(fetch = FetchType.LAZY, optional = false)
    @JoinColumn(name = "segment_id", nullable = false)
    private @Nullable StoredSegment segment;

    @Column(nullable = false)
    private long classRevision;

    @Column(nullable = false)
    private String name = "";

    private @Nullable Integer modelYear;

    @Enumerated(EnumType.STRING)
    @Column(nullable = false)
    private Origin origin = Origin.DRAWING;

    @Column(nullable = false, length = 1000000)
    private String dimensions = "";

    @Column(nullable = false, length = 50000)
    private String recorded = "";

    @Column(nullable = false)
    private String dimensionDigest = "";

    @Column(nullable = false)
    private Double[] measures = {};

    @Column(nullable = false)
    private Double[] scalars = {};

    @Column(nullable = false, length = 200000)
    private String valuesSetAside = ValuesApart.NONE;

    private Double @Nullable [] classMeasures;

    @Column(nullable = false)
    private String measureLayout = "";

    private @Nullable String setAsideReason;

    private @Nullable String setAsideBy;

    private @Nullable Instant setAsideAt;

    @Column(nullable = false, updatable = false)
    private Instant createdAt = Instant.EPOCH;

    @Column(nullable = false, updatable = false)
    private String createdBy = "";

    @Column(nullable = false)
    private Instant changedAt = Instant.EPOCH;

    @Column(nullable = false)
    private String changedBy = "";

    protected StoredPackage() {}

    StoredPackage(String by, Instant now) {
        createdBy = by;
        createdAt = now;
    }

    void become(PackageDraft draft, StoredSegment inSegment, String by, Instant now) {
        DimensionSet before = id == null ? null : dimensions();
        DimensionSet marked = draft.dimensions().markedSince(before, by, now);
        segment = inSegment;
        name = draft.name();
        modelYear = draft.modelYear();
        origin = draft.origin();
        dimensions = DimensionText.write(marked);
        recorded = DimensionText.writeRecorded(marked);
        dimensionDigest = draft.digest();
        touch(by, now);
    }

    /** Takes the measures of the draft that it has become. */
    void measure(ValueLayout layout, PackageDraft draft) {
        keep(layout, numbers(layout, draft.dimensions(), draft.measures(layout)));
    }

    /** Computes the measures anew. */
    void measure(ValueLayout layout) {
        keep(layout, numbers(layout));
    }

    private void keep(ValueLayout layout, Numbers numbers) {
        measures = numbers.measures();
        scalars = numbers.scalars();
        classMeasures = numbers.classMeasures();
        measureLayout = layout.fingerprint();
    }

    /** What is computed from the dimensions. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Numbers(Double[] measures, Double[] scalars, Double @Nullable [] classMeasures) {}

    Numbers numbers(ValueLayout layout) {
        DimensionSet set = dimensions();
        return numbers(layout, set, layout.measuresOf(set));
    }

    private Numbers numbers(ValueLayout layout, DimensionSet set, double[] ofAll) {
        Set<String> apart = valuesSetAside().keySet();
        return new Numbers(
                NullableNumbers.of(ofAll),
                NullableNumbers.of(ValueLayout.scalarsOf(set, apart)),
                apart.isEmpty() ? null : NullableNumbers.of(layout.classMeasuresOf(set, apart)));
    }

    void enterRevision(long revision) {
        classRevision = revision;
    }

    void setAside(@Nullable SetAside apart, String by, Instant now) {
        setAsideReason = apart == null ? null : apart.reason();
        setAsideBy = apart == null ? null : apart.by();
        setAsideAt = apart == null ? null : apart.at();
        touch(by, now);
    }

    void setValueAside(String key, SetAside apart) {
        Map<String, SetAside> all = new TreeMap<>(valuesSetAside());
        all.put(key, apart);
        valuesSetAside = SetAsideText.write(all);
        touch(apart.by(), apart.at());
    }

    boolean takeValueBack(String key, String by, Instant now) {
        Map<String, SetAside> all = new TreeMap<>(valuesSetAside());
        boolean was = all.remove(key) != null;
        valuesSetAside = SetAsideText.write(all);
        touch(by, now);
        return was;
    }

    private void touch(String by, Instant now) {
        changedBy = by;
        changedAt = now;
    }

    long id() {
        return Objects.requireNonNull(id);
    }

    long version() {
        return version;
    }

    StoredSegment segment() {
        return Objects.requireNonNull(segment);
    }

    String name() {
        return name;
    }

    @Nullable
    Integer modelYear() {
        return modelYear;
    }

    PackageName packageName() {
        return new PackageName(name, segment().key(), modelYear);
    }

    Origin origin() {
        return origin;
    }

    DimensionSet dimensions() {
        return DimensionText.read(dimensions, recorded, origin);
    }

    double[] measures() {
        return NullableNumbers.orNaN(measures);
    }

    /** What tells the list of measures that it was measured by. */
    String measureLayout() {
        return measureLayout;
    }

    /** What counts of it in a class of measures. */
    ClassRow measureRow() {
        return row(classMeasures == null ? measures : classMeasures);
    }

    /** What counts of it in a class of scalars. */
    ClassRow scalarRow() {
        return row(scalars);
    }

    private ClassRow row(Double[] values) {
        return new ClassRow(
                id(), name, modelYear == null ? 0 : modelYear, origin.ordinal(), NullableNumbers.orNaN(values));
    }

    Map<String, SetAside> valuesSetAside() {
        return SetAsideText.read(valuesSetAside);
    }

    boolean counts() {
        return setAsideAt == null;
    }

    @Nullable
    SetAside setAside() {
        return setAsideReason == null || setAsideBy == null || setAsideAt == null
                ? null
                : new SetAside(setAsideReason, setAsideBy, setAsideAt);
    }

    Instant createdAt() {
        return createdAt;
    }

    String createdBy() {
        return createdBy;
    }

    Instant changedAt() {
        return changedAt;
    }

    String changedBy() {
        return changedBy;
    }
}

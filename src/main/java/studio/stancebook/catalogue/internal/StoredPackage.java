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
import org.hibernate.annotations.Formula;
import org.jspecify.annotations.Nullable;
import studio.stancebook.access.Author;
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
import studio.stancebook.dimension.Recorded;

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

    private @Nullable Long setAsideById;

    private @Nullable String setAsideBy;

    @Formula("COALESCE(" + Author.NAME_NOW + "set_aside_by_id), set_aside_by)")
    private @Nullable String setAsideByNow;

    private @Nullable Instant setAsideAt;

    @Column(nullable = false, updatable = false)
    private Instant createdAt = Instant.EPOCH;

    @Column(updatable = false)
    private @Nullable Long createdById;

    @Column(nullable = false, updatable = false)
    private String createdBy = "";

    @Formula("COALESCE(" + Author.NAME_NOW + "created_by_id), created_by)")
    private String createdByNow = "";

    @Column(nullable = false)
    private Instant changedAt = Instant.EPOCH;

    private @Nullable Long changedById;

    @Column(nullable = false)
    private String changedBy = "";

    @Formula("COALESCE(" + Author.NAME_NOW + "changed_by_id), changed_by)")
    private String changedByNow = "";

    protected StoredPackage() {}

    StoredPackage(Author by, Instant now) {
        createdById = by.personId();
        createdBy = by.name();
        createdByNow = by.name();
        createdAt = now;
    }

    void become(PackageDraft draft, StoredSegment inSegment, Author by, Instant now) {
        DimensionSet before = id == null ? null : dimensions();
        DimensionSet marked = draft.dimensions().markedSince(before, new Recorded(by.personId(), by.name(), now));
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

    void setAside(ValueAside apart) {
        setAsideReason = apart.reason();
        setAsideById = apart.by().personId();
        setAsideBy = apart.by().name();
        setAsideByNow = apart.by().name();
        setAsideAt = apart.at();
        touch(apart.by(), apart.at());
    }

    void takeBack(Author by, Instant now) {
        setAsideReason = null;
        setAsideById = null;
        setAsideBy = null;
        setAsideByNow = null;
        setAsideAt = null;
        touch(by, now);
    }

    void setValueAside(String key, ValueAside apart) {
        Map<String, ValueAside> all = new TreeMap<>(valuesSetAside());
        all.put(key, apart);
        valuesSetAside = SetAsideText.write(all);
        touch(apart.by(), apart.at());
    }

    boolean takeValueBack(String key, Author by, Instant now) {
        Map<String, ValueAside> all = new TreeMap<>(valuesSetAside());
        boolean was = all.remove(key) != null;
        valuesSetAside = SetAsideText.write(all);
        touch(by, now);
        return was;
    }

    private void touch(Author by, Instant now) {
        changedById = by.personId();
        changedBy = by.name();
        changedByNow = by.name();
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

    Map<String, ValueAside> valuesSetAside() {
        return SetAsideText.read(valuesSetAside);
    }

    boolean counts() {
        return setAsideAt == null;
    }

    @Nullable
    SetAside setAside() {
        return setAsideReason == null || setAsideByNow == null || setAsideAt == null
                ? null
                : new SetAside(setAsideReason, setAsideByNow, setAsideAt);
    }

    /** That the package is set aside, as it is kept; null when it counts. */
    @Nullable
    ValueAside wholeAside() {
        return setAsideReason == null || setAsideBy == null || setAsideAt == null
                ? null
                : new ValueAside(setAsideReason, new Author(setAsideById, setAsideBy), setAsideAt);
    }

    Instant createdAt() {
        return createdAt;
    }

    /** The name that they have now. */
    String createdBy() {
        return createdByNow;
    }

    Instant changedAt() {
        return changedAt;
    }

    /** The name that they have now. */
    String changedBy() {
        return changedByNow;
    }
}

package studio.stancebook.proposal.web;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import studio.stancebook.band.AppliedBand;
import studio.stancebook.band.Assessment;
import studio.stancebook.band.Band;
import studio.stancebook.band.BandRange;
import studio.stancebook.band.Finding;
import studio.stancebook.band.Verdict;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.drawing.strip.BandStrip;
import studio.stancebook.drawing.strip.StripReading;
import studio.stancebook.drawing.strip.StripTick;
import studio.stancebook.drawing.strip.StripVerdict;
import studio.stancebook.quantity.AngleReference;
import studio.stancebook.statistics.SortedColumn;

/** The findings of an assessment as strips on a class. */
final class ProposalStrips {

    private final ClassSnapshot snapshot;
    private final Map<String, Band> bands;
    private final List<Assessment> earlier;
    private final Function<Finding, String> remark;

    /**
     * @param bands by measure; where one is the version that was applied, it says how sure its edges are
     * @param earlier the assessments of the revisions before, oldest first
     * @param remark what is said beside a finding
     */
    ProposalStrips(
            ClassSnapshot snapshot,
            Map<String, Band> bands,
            List<Assessment> earlier,
            Function<Finding, String> remark) {
        this.snapshot = snapshot;
        this.bands = bands;
        this.earlier = earlier;
        this.remark = remark;
    }

    /** The strips of all findings of some kinds, those furthest outside first. */
    List<BandStrip> of(Assessment assessment, Verdict.VerdictKind... kinds) {
        List<Verdict.VerdictKind> wanted = List.of(kinds);
        return assessment.findings().stream()
                .filter(finding -> wanted.contains(finding.kind()))
                .sorted((a, b) -> Double.compare(bandWidths(b), bandWidths(a)))
                .map(this::strip)
                .toList();
    }

    private static double bandWidths(Finding finding) {
        return finding.verdict() instanceof Verdict.Outside outside
                ? outside.byBandWidths().orElse(0)
                : 0;
    }

    private BandStrip strip(Finding finding) {
        StripReading.Builder reading = StripReading.of(
                        "strip-" + finding.measure(),
                        finding.measure(),
                        finding.name(),
                        finding.decimals(),
                        finding.unit().symbol())
                .verdict(StripVerdict.ofKey(finding.verdict().key()), remark.apply(finding))
                .link("/segments/" + snapshot.segment() + "/bands/" + finding.measure());
        addClass(reading, finding.measure());
        addBand(reading, finding);
        addValue(reading, finding);
        return BandStrip.of(LeaningAngles.turned(finding.measure()) ? fromVertical(reading.build()) : reading.build());
    }

    private static StripReading fromVertical(StripReading kept) {
        return kept.mirrored(LeaningAngles.words(kept.measure(), kept.name()), AngleReference.VERTICAL::of);
    }

    private void addClass(StripReading.Builder reading, String measure) {
        SortedColumn column = snapshot.column(measure);
        if (column.n() > BandStrip.MOST_TICKS) {
            reading.ticks(column.toArray());
        } else {
            reading.ticks(snapshot.ticks(measure).stream()
                    .map(tick -> new StripTick(tick.value(), tick.name(), null))
                    .toList());
        }
        if (!column.isEmpty()) {
            reading.median(column.median());
        }
    }

    private void addBand(StripReading.Builder reading, Finding finding) {
        AppliedBand applied = finding.band();
        if (applied == null) {
            return;
        }
        reading.band(applied.limits().lower(), applied.limits().upper());
        Band band = bands.get(finding.measure());
        BandRange range = band == null ? null : band.range();
        if (band != null && range != null && band.version() == applied.version()) {
            reading.edges(range.lowerInterval(), range.upperInterval());
        }
    }

    private void addValue(StripReading.Builder reading, Finding finding) {
        Double value = finding.value();
        Double uncertainty = finding.uncertainty();
        if (value != null && uncertainty != null) {
            reading.value(value, uncertainty);
        }
        reading.earlier(earlier.stream()
                .flatMap(assessment -> assessment.find(finding.measure()).map(Finding::value).stream())
                .toList());
    }
}

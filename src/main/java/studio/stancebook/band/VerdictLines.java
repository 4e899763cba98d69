package studio.stancebook.band;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import studio.stancebook.band.VerdictLine.MoveLine;
import studio.stancebook.dimension.Variable;
import studio.stancebook.measure.MeasureUnit;
import studio.stancebook.measure.NotMeasurable;
import studio.stancebook.moves.SingleMove;
import studio.stancebook.quantity.Interval;

/** Writes an assessment as flat lines and reads it back; what is read is what was written. */
public final class VerdictLines {

    private VerdictLines() {}

    /** @param moves the single moves of measures that are outside, by key; none where there is no entry */
    public static List<VerdictLine> of(Assessment assessment, Map<String, List<SingleMove>> moves) {
        return assessment.findings().stream()
                .map(finding -> line(finding, moves.getOrDefault(finding.measure(), List.of())))
                .toList();
    }

    public static Assessment read(List<VerdictLine> lines) {
        return new Assessment(lines.stream().map(VerdictLines::finding).toList());
    }

    /** The single moves that lines tell, by measure. */
    public static Map<String, List<SingleMove>> moves(List<VerdictLine> lines) {
        return lines.stream()
                .filter(line -> !line.singleMoves().isEmpty())
                .collect(Collectors.toMap(VerdictLine::measure, VerdictLines::moves));
    }

    private static VerdictLine line(Finding finding, List<SingleMove> moves) {
        AppliedBand band = finding.band();
        Verdict.Outside outside = finding.verdict() instanceof Verdict.Outside o ? o : null;
        Verdict.NotMeasurable none = finding.verdict() instanceof Verdict.NotMeasurable n ? n : null;
        return new VerdictLine(
                finding.measure(),
                finding.name(),
                finding.unit().key(),
                finding.decimals(),
                finding.value(),
                finding.uncertainty(),
                band == null ? null : finite(band.limits().lower()),
                band == null ? null : finite(band.limits().upper()),
                band == null ? null : band.version(),
                finding.verdict().key(),
                outside == null ? null : outside.by(),
                outside == null ? null : boxed(outside.byBandWidths()),
                moveLines(moves),
                none == null ? List.of() : none.missing(),
                none == null ? null : none.reason(),
                finding.notes());
    }

    private static List<MoveLine> moveLines(List<SingleMove> moves) {
        return moves.stream()
                .map(move -> new MoveLine(
                        move.variable().key(),
                        move.change(),
                        move.variable().label(),
                        move.variable().unit().symbol(),
                        move.share()))
                .toList();
    }

    private static @Nullable Double finite(double limit) {
        return Double.isInfinite(limit) ? null : limit;
    }

    private static @Nullable Double boxed(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }

    private static Finding finding(VerdictLine line) {
        return new Finding(
                line.measure(),
                line.name(),
                unit(line.unit()),
                line.decimals(),
                line.value(),
                line.uncertainty(),
                band(line),
                verdict(line),
                line.notes());
    }

    private static MeasureUnit unit(String key) {
        return Arrays.stream(MeasureUnit.values())
                .filter(unit -> unit.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no unit " + key));
    }

    private static @Nullable AppliedBand band(VerdictLine line) {
        Integer version = line.bandVersion();
        Double lower = line.lower();
        Double upper = line.upper();
        return version == null
                ? null
                : new AppliedBand(
                        version,
                        new Interval(
                                lower == null ? Double.NEGATIVE_INFINITY : lower,
                                upper == null ? Double.POSITIVE_INFINITY : upper));
    }

    private static Verdict verdict(VerdictLine line) {
        return switch (kind(line.verdict())) {
            case INSIDE -> new Verdict.Inside();
            case TOO_CLOSE -> new Verdict.TooClose();
            case NO_BAND -> new Verdict.NoBand();
            case NOT_MEASURABLE -> new Verdict.NotMeasurable(reason(line), line.missing());
            case OUTSIDE_LOW -> outside(Side.LOW, line);
            case OUTSIDE_HIGH -> outside(Side.HIGH, line);
        };
    }

    /** Reasons that were kept in JSON names are told in words. */
    private static String reason(VerdictLine line) {
        String kept = line.reason() == null ? "" : line.reason();
        return kept.startsWith("needs ") && !line.missing().isEmpty() ? NotMeasurable.needs(line.missing()) : kept;
    }

    private static Verdict.VerdictKind kind(String key) {
        return Arrays.stream(Verdict.VerdictKind.values())
                .filter(kind -> kind.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("There is no verdict " + key));
    }

    private static Verdict outside(Side side, VerdictLine line) {
        Double by = line.by();
        Double byBandWidths = line.byBandWidths();
        if (by == null) {
            throw new IllegalArgumentException(line.measure() + " is outside, but it is not said by how much");
        }
        return new Verdict.Outside(
                side, by, byBandWidths == null ? OptionalDouble.empty() : OptionalDouble.of(byBandWidths));
    }

    private static List<SingleMove> moves(VerdictLine line) {
        return line.singleMoves().stream().flatMap(move -> move(move).stream()).toList();
    }

    /** A variable that there is no more is left out. */
    private static Optional<SingleMove> move(MoveLine move) {
        return Variable.ofKey(move.dimension()).map(variable -> new SingleMove(variable, move.change(), move.share()));
    }
}

package studio.stancebook.underlay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;
import studio.stancebook.band.AppliedBand;
import studio.stancebook.band.Bands;
import studio.stancebook.catalogue.SegmentName;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Scale;
import studio.stancebook.drawing.sideview.BodyLines;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureUnit;
import studio.stancebook.measure.Measured;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.measure.Subject;
import studio.stancebook.paper.Path;
import studio.stancebook.problem.Impossible;
import studio.stancebook.proposal.ProposalView;
import studio.stancebook.proposal.Proposals;
import studio.stancebook.quantity.Interval;
import studio.stancebook.quantity.ShownUnits;
import studio.stancebook.statistics.SortedColumn;

/** Finds what a sheet is drawn from. */
@Component
public class Frameworks {

    private final Segments segments;
    private final ClassSnapshots classes;
    private final Bands bands;
    private final Proposals proposals;
    private final StudioMeasures measures;

    Frameworks(Segments segments, ClassSnapshots classes, Bands bands, Proposals proposals, StudioMeasures measures) {
        this.segments = segments;
        this.classes = classes;
        this.bands = bands;
        this.proposals = proposals;
        this.measures = measures;
    }

    /**
     * The framework of a segment or of the newest revision of a proposal.
     *
     * @throws Impossible naming the field that cannot be, or that is missing
     * @throws studio.stancebook.problem.NotFound if there is no such segment, or no such proposal that may be seen
     */
    public Framework of(UnderlayOrder order, SignedIn who) {
        if (order.proposal() != null) {
            return ofProposal(order, proposals.get(order.proposal(), who));
        }
        if (order.segment() == null) {
            throw Impossible.ofField("segment", "Choose a segment, or a proposal, to draw the sheet of.");
        }
        return ofSegment(order, segments.named(order.segment()));
    }

    private Framework ofSegment(UnderlayOrder order, SegmentName segment) {
        ClassSnapshot snapshot = classes.of(segment.key());
        Map<String, AppliedBand> applied = bands.applied(segment.key());
        Map<String, Proportion> found = new LinkedHashMap<>();
        for (String key : Framework.MEASURES) {
            AppliedBand band = applied.get(key);
            value(snapshot.column(key), band, order.points().get(key))
                    .ifPresent(value -> found.put(key, proportion(key, value.at(), value.basis(), band)));
        }
        return framework(order, segment.name(), segment.name(), found, null);
    }

    private Framework ofProposal(UnderlayOrder order, ProposalView proposal) {
        DimensionSet set = proposal.newest().dimensions();
        Map<String, AppliedBand> applied = bands.applied(proposal.segment().key());
        Subject subject = new Subject(set);
        Map<String, Proportion> found = new LinkedHashMap<>();
        for (String key : Framework.MEASURES) {
            AppliedBand band = applied.get(key);
            Double point = order.points().get(key);
            if (point != null) {
                value(SortedColumn.empty(), band, point)
                        .ifPresent(value -> found.put(key, proportion(key, value.at(), value.basis(), band)));
            } else if (measures.current().get(key).of(subject) instanceof Measured measured) {
                found.put(key, proportion(key, measured.value(), Proportion.Basis.PROPOSAL, band));
            }
        }
        String name = proposal.name() + ", revision " + proposal.newest().number();
        return framework(order, name, proposal.segment().name(), found, set);
    }

    private record FoundLine(double at, Proportion.Basis basis) {}

    private static Optional<FoundLine> value(SortedColumn column, @Nullable AppliedBand band, @Nullable Double point) {
        Interval limits = band == null ? null : band.limits();
        if (point != null && limits != null && Double.isFinite(limits.width())) {
            return Optional.of(new FoundLine(limits.lower() + point * limits.width(), Proportion.Basis.POINT));
        }
        if (!column.isEmpty()) {
            double median = column.median();
            double kept = limits == null ? median : Math.max(limits.lower(), Math.min(limits.upper(), median));
            return Optional.of(new FoundLine(kept, Proportion.Basis.MEDIAN));
        }
        return limits == null ? Optional.empty() : Optional.of(new FoundLine(middle(limits), Proportion.Basis.BAND));
    }

    private static double middle(Interval limits) {
        if (Double.isFinite(limits.width())) {
            return (limits.lower() + limits.upper()) / 2;
        }
        return Double.isFinite(limits.lower()) ? limits.lower() : limits.upper();
    }

    private Proportion proportion(String key, double value, Proportion.Basis basis, @Nullable AppliedBand band) {
        Measure measure = measures.current().get(key);
        return new Proportion(
                key,
                measure.name(),
                measure.decimals(),
                measure.unit() == MeasureUnit.DEG,
                value,
                basis,
                band == null ? null : band.limits(),
                band == null ? null : band.version());
    }

    private Framework framework(
            UnderlayOrder order,
            String subject,
            String segment,
            Map<String, Proportion> found,
            @Nullable DimensionSet own) {
        TyreAndWheelbase size = size(order, found, own);
        Proportion wheelbase = found.get(Framework.WHEELBASE);
        if (wheelbase != null && order.tyre() != null && order.wheelbaseMm() != null) {
            found.put(Framework.WHEELBASE, wheelbase.given(size.wheelbase() / size.diameter()));
        }
        List<String> missing = new ArrayList<>();
        Framework.MEASURES.stream()
                .filter(key -> !found.containsKey(key))
                .forEach(key -> missing.add(measures.current().get(key).name()));
        return new Framework(
                order.title().isBlank() ? subject : order.title().strip(),
                subject,
                segment,
                size.tyre(),
                size.diameter(),
                size.wheelbase(),
                size.front(),
                size.rear(),
                found,
                order.outline() ? outline(order, own) : List.of(),
                missing);
    }

    /** Only at its own size and proportions: otherwise it would be another body's outline. */
    private static List<Path> outline(UnderlayOrder order, @Nullable DimensionSet own) {
        boolean other = order.tyre() != null
                || order.wheelbaseMm() != null
                || !order.points().isEmpty();
        if (own == null || other) {
            throw Impossible.ofField(
                    "outline",
                    "The outline is that of a proposal at its own size: choose a proposal, and leave tyre, wheelbase and"
                            + " positions in bands empty.");
        }
        return BodyLines.of(own);
    }

    private record TyreAndWheelbase(String tyre, double diameter, double wheelbase, Wheel front, Wheel rear) {}

    private static TyreAndWheelbase size(
            UnderlayOrder order, Map<String, Proportion> found, @Nullable DimensionSet own) {
        Proportion ratio = found.get(Framework.WHEELBASE);
        Double diameter = order.tyre() == null ? null : order.tyre().overallDiameterMm();
        Double wheelbase = order.wheelbaseMm();
        if (diameter == null && wheelbase != null) {
            diameter = wheelbase / required(ratio, "tyre");
        } else if (diameter != null && wheelbase == null) {
            wheelbase = diameter * required(ratio, "wheelbase");
        }
        if (diameter == null || wheelbase == null) {
            return ownSize(own);
        }
        Double rim = order.tyre() == null ? null : order.tyre().rimDiameterMm();
        String said = order.tyre() == null
                ? "diameter " + ShownUnits.text(diameter, 1)
                : order.tyre().text();
        return new TyreAndWheelbase(
                said, diameter, wheelbase, Wheel.of(0, diameter, rim), Wheel.of(wheelbase, diameter, rim));
    }

    private static double required(@Nullable Proportion ratio, String lacking) {
        if (ratio == null) {
            throw Impossible.ofField(
                    lacking,
                    "Nothing here says how long the wheelbase is in wheels, neither a band nor a value: give the "
                            + lacking + " as well.");
        }
        return ratio.value();
    }

    private static TyreAndWheelbase ownSize(@Nullable DimensionSet own) {
        if (own == null) {
            throw Impossible.ofField("tyre", "Give a tyre size such as 265/70R17, or a wheelbase.");
        }
        OptionalDouble front = own.tyreDiameter(Axle.FRONT);
        OptionalDouble rear = own.tyreDiameter(Axle.REAR);
        if (own.scale() == Scale.UNSCALED || front.isEmpty() || rear.isEmpty()) {
            throw Impossible.ofField(
                    "tyre",
                    "The proposal does not say how large its tyres are in mm: give a tyre size or a wheelbase.");
        }
        double wheelbase = own.scalar(Dimension.WHEELBASE).orElseThrow();
        double diameter = (front.getAsDouble() + rear.getAsDouble()) / 2;
        String said = own.tyre(Axle.FRONT).map(tyre -> tyre.text()).orElse("diameter " + ShownUnits.text(diameter, 1));
        return new TyreAndWheelbase(
                said, diameter, wheelbase, ownWheel(own, Axle.FRONT, 0), ownWheel(own, Axle.REAR, wheelbase));
    }

    private static Wheel ownWheel(DimensionSet own, Axle axle, double x) {
        double radius = own.tyreDiameter(axle).orElseThrow() / 2;
        double height = Math.min(own.scalar(axle.loadedRadius()).orElse(radius), radius);
        OptionalDouble rim = own.rimDiameter(axle);
        return new Wheel(x, height, radius, rim.isPresent() ? rim.getAsDouble() / 2 : null);
    }
}

package studio.stancebook.dimension.reshaping;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Polyline;
import studio.stancebook.geometry.Point;
import studio.stancebook.statistics.QuantileType;
import studio.stancebook.statistics.Quantiles;
import studio.stancebook.tyre.TyreDesignation;

/**
 * What is typical of a class: the median of each dimension and of each coordinate of a landmark, in {@link Proportions}, of
 * those that at least half of its packages record; and of the packages with an outline the one that comes nearest to that,
 * whose lines are taken. Studio decision 0107.
 */
public final class TypicalPackage {

    private final Proportions medians;
    private final DimensionSet nearest;

    private TypicalPackage(Proportions medians, DimensionSet nearest) {
        this.medians = medians;
        this.nearest = nearest;
    }

    private record Member(DimensionSet set, Proportions proportions) {}

    /** Empty where no package has a front tyre. */
    public static Optional<TypicalPackage> of(List<DimensionSet> packages) {
        List<Member> members = new ArrayList<>();
        packages.forEach(set -> Proportions.of(set).ifPresent(found -> members.add(new Member(set, found))));
        if (members.isEmpty()) {
            return Optional.empty();
        }
        Proportions medians = medians(members);
        DimensionSet nearest = members.stream()
                .min(Comparator.comparing((Member member) -> -lines(member.set()))
                        .thenComparingDouble(member -> distance(member.proportions(), medians)))
                .orElseThrow()
                .set();
        return Optional.of(new TypicalPackage(medians, nearest));
    }

    /**
     * What lies between two classes.
     *
     * @param share of the way to the other one, from 0 to 1; lines are those of the nearer one
     */
    public TypicalPackage towards(TypicalPackage other, double share) {
        Map<Dimension, Double> lengths =
                between(medians.lengths(), other.medians.lengths(), (from, to) -> from + share * (to - from));
        Map<Landmark, Point> landmarks = between(
                medians.landmarks(),
                other.medians.landmarks(),
                (from, to) ->
                        new Point(from.x() + share * (to.x() - from.x()), from.z() + share * (to.z() - from.z())));
        return new TypicalPackage(new Proportions(lengths, landmarks), share <= 0.5 ? nearest : other.nearest);
    }

    /** A package of typical proportions on these tyres; with a wheelbase of its own, or the typical one if that is 0. */
    public DimensionSet on(TyreDesignation tyre, double wheelbaseMm) {
        return new TypicalBody(medians, nearest).on(tyre, wheelbaseMm);
    }

    /** On its own tyres and wheelbase; empty where no tyre is named. */
    public Optional<DimensionSet> typical() {
        return tyre().map(tyre -> on(tyre, 0));
    }

    /** The front tyre that its lines were drawn on; empty where none is named. */
    public Optional<TyreDesignation> tyre() {
        return nearest.tyre(Axle.FRONT);
    }

    private interface Between<V> {
        V of(V from, V to);
    }

    private static <K, V> Map<K, V> between(Map<K, V> from, Map<K, V> to, Between<V> between) {
        Map<K, V> both = new HashMap<>();
        from.forEach((key, value) -> {
            V other = to.get(key);
            if (other != null) {
                both.put(key, between.of(value, other));
            }
        });
        return both;
    }

    private static int lines(DimensionSet set) {
        return (set.points(Polyline.OUTLINE).isEmpty() ? 0 : 4)
                + (set.points(Polyline.DAYLIGHT_OPENING).isEmpty() ? 0 : 2)
                + (set.points(Polyline.UNDERBODY).isEmpty() ? 0 : 1);
    }

    private static double distance(Proportions one, Proportions other) {
        double sum = 0;
        int n = 0;
        for (Map.Entry<Landmark, Point> landmark : one.landmarks().entrySet()) {
            Point at = other.landmarks().get(landmark.getKey());
            if (at != null) {
                sum += Math.hypot(
                        at.x() - landmark.getValue().x(),
                        at.z() - landmark.getValue().z());
                n++;
            }
        }
        return n == 0 ? Double.MAX_VALUE : sum / n;
    }

    private static Proportions medians(List<Member> members) {
        Map<Dimension, Double> lengths = new EnumMap<>(Dimension.class);
        for (Dimension dimension : Dimension.values()) {
            median(members, member -> member.proportions().lengths().get(dimension))
                    .ifPresent(value -> lengths.put(dimension, value));
        }
        Map<Landmark, Point> landmarks = new EnumMap<>(Landmark.class);
        for (Landmark landmark : Landmark.values()) {
            Function<Member, Optional<Point>> place = member ->
                    Optional.ofNullable(member.proportions().landmarks().get(landmark));
            Optional<Double> x =
                    median(members, member -> place.apply(member).map(Point::x).orElse(null));
            Optional<Double> z =
                    median(members, member -> place.apply(member).map(Point::z).orElse(null));
            x.ifPresent(along -> z.ifPresent(up -> landmarks.put(landmark, new Point(along, up))));
        }
        return new Proportions(lengths, landmarks);
    }

    /** Empty where fewer than half have it. */
    private static Optional<Double> median(List<Member> members, Function<Member, @Nullable Double> value) {
        double[] sorted = members.stream()
                .map(value)
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .sorted()
                .toArray();
        return sorted.length * 2 < members.size() || sorted.length == 0
                ? Optional.empty()
                : Optional.of(Quantiles.of(sorted, 0.5, QuantileType.TYPE_7));
    }
}

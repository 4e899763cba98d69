package studio.stancebook.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A made-up side view: two tyres and an underbody, drawn from a seeded generator. */
record SideView(TyreArc front, TyreArc rear, List<Point> underbody) {

    /** Side views whose underbodies rise and fall, double back, run into the tyres and over them, but stay above ground. */
    static Stream<SideView> made(long seed, int count) {
        Random random = new Random(seed);
        return IntStream.range(0, count).mapToObj(i -> made(random));
    }

    private static SideView made(Random random) {
        double wheelbase = between(random, 1800, 3600);
        TyreArc front = TyreArc.onGround(0, between(random, 250, 450));
        TyreArc rear = TyreArc.onGround(wheelbase, between(random, 250, 450));
        List<Point> underbody = new ArrayList<>();
        int points = 4 + random.nextInt(20);
        for (int i = 0; i < points; i++) {
            double along = (i + between(random, -0.7, 0.7)) / (points - 1.0);
            underbody.add(new Point(-900 + along * (wheelbase + 1900), between(random, 60, 700)));
        }
        return new SideView(front, rear, underbody);
    }

    static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    double wheelbase() {
        return rear.centreX() - front.centreX();
    }

    UnderbodyAngles angles() {
        return UnderbodyAngles.of(wheelbase(), front, rear, underbody);
    }

    SideView scaled(double factor) {
        return new SideView(
                scaled(front, factor),
                scaled(rear, factor),
                underbody.stream()
                        .map(point -> new Point(point.x() * factor, point.z() * factor))
                        .toList());
    }

    private static TyreArc scaled(TyreArc tyre, double factor) {
        return new TyreArc(tyre.centreX() * factor, tyre.centreHeight() * factor, tyre.radius() * factor);
    }

    SideView mirrored() {
        double wheelbase = wheelbase();
        List<Point> turned = new ArrayList<>(underbody.stream()
                .map(point -> new Point(wheelbase - point.x(), point.z()))
                .toList());
        Collections.reverse(turned);
        return new SideView(
                new TyreArc(0, rear.centreHeight(), rear.radius()),
                new TyreArc(wheelbase, front.centreHeight(), front.radius()),
                turned);
    }

    SideView reversed() {
        List<Point> turned = new ArrayList<>(underbody);
        Collections.reverse(turned);
        return new SideView(front, rear, turned);
    }

    /** With {@code count} more points, each somewhere on an edge. */
    SideView withPointsOnEdges(Random random, int count) {
        List<Point> more = new ArrayList<>(underbody);
        for (int i = 0; i < count; i++) {
            int edge = random.nextInt(more.size() - 1);
            more.add(edge + 1, on(more.get(edge), more.get(edge + 1), random.nextDouble()));
        }
        return new SideView(front, rear, more);
    }

    static Point on(Point from, Point to, double t) {
        return new Point(from.x() + t * (to.x() - from.x()), from.z() + t * (to.z() - from.z()));
    }

    SideView withUnderbody(List<Point> other) {
        return new SideView(front, rear, other);
    }

    SideView withFront(TyreArc other) {
        return new SideView(other, rear, underbody);
    }

    SideView withRear(TyreArc other) {
        return new SideView(front, other, underbody);
    }
}

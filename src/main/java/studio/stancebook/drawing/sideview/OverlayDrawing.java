package studio.stancebook.drawing.sideview;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Reading;
import studio.stancebook.drawing.Lettering;
import studio.stancebook.drawing.Phrases;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.drawing.TextLine;
import studio.stancebook.geometry.Point;

/**
 * Two to six side views laid over each other at one point of the ground line, the first of them where it would stand alone,
 * the others in mm or scaled to its tyre diameter. Every line is labelled at its end.
 */
public final class OverlayDrawing {

    public static final int LEAST = 2;
    public static final int MOST = 6;

    private static final double ROW_EM = 1.35;
    private static final double LEADER_EM = 1.6;
    private static final double SWATCH_EM = 1.8;
    private static final int LONGEST_NAME = 24;

    private final List<Laid> laid;
    private final boolean inWheels;

    /** A vehicle, its pen and where it stands. */
    private record Laid(String label, String pen, Vehicle vehicle, Placement placement) {

        double left() {
            return placement.of(new Point(vehicle.frontEnd(), 0)).x();
        }

        double right() {
            return placement.of(new Point(vehicle.rearEnd(), 0)).x();
        }

        double top() {
            return placement.of(new Point(0, vehicle.topEnd())).z();
        }

        /** Where its label's leader begins. */
        Point end() {
            return placement.of(Ghosts.end(vehicle));
        }
    }

    private OverlayDrawing(List<Laid> laid, boolean inWheels) {
        this.laid = laid;
        this.inWheels = inWheels;
    }

    /**
     * The drawing of some vehicles.
     *
     * @param title of the picture
     * @param vehicles {@value #LEAST} to {@value #MOST}, the first of which the others are laid over
     * @throws IllegalArgumentException if there are fewer or more, or if they are to be scaled to a tyre that is not known
     */
    public static SideView of(String title, List<Ghost> vehicles, Alignment alignment, boolean inWheels) {
        if (vehicles.size() < LEAST || vehicles.size() > MOST) {
            throw new IllegalArgumentException("From 2 to 6 are laid over each other, not " + vehicles.size());
        }
        List<Laid> laid = laid(vehicles, alignment, inWheels);
        OverlayDrawing drawing = new OverlayDrawing(laid, inWheels);
        String names = laid.stream().map(Laid::label).collect(Collectors.joining(", "));
        return new SideView(
                "laid-over",
                Lettering.writable(title),
                Phrases.of("drawing.laid-over.description", Integer.toString(laid.size()), names),
                drawing.sheet(Format.WIDE),
                drawing.sheet(Format.NARROW),
                List.of(),
                false,
                List.of(Phrases.of(inWheels ? "drawing.laid-over.wheels" : "drawing.laid-over.mm")));
    }

    private static List<Laid> laid(List<Ghost> vehicles, Alignment alignment, boolean inWheels) {
        Vehicle first = Vehicle.of(vehicles.get(0).dimensions());
        return IntStream.range(0, vehicles.size())
                .mapToObj(i -> {
                    Ghost ghost = vehicles.get(i);
                    Vehicle vehicle = Vehicle.of(ghost.dimensions());
                    double factor = inWheels ? wheel(first) / wheel(vehicle) : 1;
                    double shift = alignment.xOf(first) - factor * alignment.xOf(vehicle);
                    String name = Lettering.shortened(Lettering.writable(ghost.name()), LONGEST_NAME);
                    return new Laid(
                            (i + 1) + " " + name, "line-" + (char) ('a' + i), vehicle, new Placement(factor, shift));
                })
                .toList();
    }

    private static double wheel(Vehicle vehicle) {
        Double diameter = vehicle.wheelDiameter();
        if (diameter == null) {
            throw new IllegalArgumentException("A vehicle without known tyres cannot be scaled to its tyre diameter");
        }
        return diameter;
    }

    private Sheet sheet(Format format) {
        Extent extent = extent(format);
        DrawingBuilder drawing = new DrawingBuilder();
        if (inWheels) {
            Grid.ofWheels(wheel(laid.get(0).vehicle), extent, drawing);
        } else {
            Grid.ofMillimetres(extent, drawing);
        }
        drawing.line(LayerId.GROUND, "ground", new Point(extent.left(), 0), new Point(extent.right(), 0));
        // The first on top, as the one that the others are held against.
        for (int i = laid.size() - 1; i >= 0; i--) {
            draw(laid.get(i), drawing);
        }
        labels(format, extent, drawing);
        return extent.sheet(drawing, Format.WIDE);
    }

    private Extent extent(Format format) {
        double left = laid.stream().mapToDouble(Laid::left).min().orElse(0);
        double right = laid.stream().mapToDouble(Laid::right).max().orElse(0);
        double top = laid.stream().mapToDouble(Laid::top).max().orElse(0);
        double share = format.emShare();
        double marginEm = 1 + LEADER_EM + SWATCH_EM + 0.8 + longestLabelEm(format);
        double em = (right - left) * share / (1 - marginEm * share);
        double bottom = -1.2 * em;
        double height = Math.max(top + 1.5 * em, bottom + (laid.size() + 1) * ROW_EM * em);
        return new Extent(left - em, right + (marginEm - 1) * em, bottom, height, em, right);
    }

    private double longestLabelEm(Format format) {
        return laid.stream()
                .mapToDouble(one -> Lettering.widthEm(label(one, format)))
                .max()
                .orElse(0);
    }

    /** The narrow sheet has room for the number; the list below it has the names. */
    private static String label(Laid one, Format format) {
        return format == Format.WIDE ? one.label : one.label.substring(0, 1);
    }

    /** The silhouette and the tyres in the full weight of the line, wheel openings, rocker, glass and doors in a fine one. */
    private static void draw(Laid one, DrawingBuilder drawing) {
        PathBuilder path = new PathBuilder(one.placement);
        new Silhouette(one.vehicle, false, one.placement).pieces().forEach(piece -> path.append(piece.path()));
        drawing.stroke(LayerId.BODY, one.pen, path.empty() ? box(one) : path);
        DrawingBuilder fine = drawing.placed(one.placement, pen -> one.pen + " fine");
        Marking unmarked = new Marking(Set.of(), Set.of());
        Silhouette silhouette = new Silhouette(one.vehicle, false);
        new LowerBody(one.vehicle, silhouette, fine, unmarked).draw(!path.empty());
        new Cabin(one.vehicle, fine, unmarked, false).draw();
        for (Axle axle : Axle.values()) {
            one.vehicle
                    .tyre(axle)
                    .ifPresent(tyre -> drawing.disc(
                            LayerId.WHEELS,
                            one.pen,
                            one.placement.of(tyre.centre()),
                            tyre.radius() * one.placement.factor()));
        }
    }

    /** Ends and roof in straight lines, for what has no landmark. */
    private static PathBuilder box(Laid one) {
        Double height = one.vehicle.find(Reading.OVERALL_HEIGHT);
        double top = height == null ? one.vehicle.nominalDiameter() : height;
        double foot = 0.4 * one.vehicle.nominalDiameter();
        return new PathBuilder(one.placement)
                .moveTo(one.vehicle.frontEnd(), foot)
                .upTo(top)
                .lineTo(one.vehicle.rearEnd(), top)
                .upTo(foot);
    }

    /** A column of labels beside the drawing in the order of the lines' ends, each with a leader and a piece of its line. */
    private void labels(Format format, Extent extent, DrawingBuilder drawing) {
        double em = extent.em();
        List<Laid> byHeight = new ArrayList<>(laid);
        byHeight.sort((a, b) -> Double.compare(b.end().z(), a.end().z()));
        double[] z = rows(byHeight, extent);
        double leaderEnd = extent.rulerX() + LEADER_EM * em;
        for (int i = 0; i < z.length; i++) {
            Laid one = byHeight.get(i);
            Point swatch = new Point(leaderEnd, z[i]);
            Point words = new Point(leaderEnd + SWATCH_EM * em, z[i]);
            drawing.line(LayerId.GUIDES, "leader", one.end(), swatch);
            drawing.line(LayerId.GUIDES, one.pen, swatch, words);
            drawing.words(new TextLine("strong", words.x() + 0.3 * em, -z[i] + 0.33 * em, "start", label(one, format)));
        }
    }

    /** The heights of the labels from the top, at least a row apart and within the sheet. */
    private static double[] rows(List<Laid> byHeight, Extent extent) {
        double row = ROW_EM * extent.em();
        double[] z = new double[byHeight.size()];
        double ceiling = extent.top() - 0.8 * extent.em();
        for (int i = 0; i < z.length; i++) {
            z[i] = Math.min(byHeight.get(i).end().z(), ceiling);
            ceiling = z[i] - row;
        }
        double floor = extent.bottom() + 0.6 * extent.em();
        for (int i = z.length - 1; i >= 0; i--) {
            z[i] = Math.max(z[i], floor);
            floor = z[i] + row;
        }
        return z;
    }
}

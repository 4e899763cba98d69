package studio.stancebook.drawing.sideview;

import java.util.List;
import studio.stancebook.dimension.Axle;
import studio.stancebook.dimension.Landmark;
import studio.stancebook.dimension.Reading;
import studio.stancebook.drawing.Lettering;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.geometry.Point;

/** Draws one sheet, from the grid at the back to the words in front. */
final class SideViewRenderer {

    private final Vehicle vehicle;
    private final SideViewOptions options;
    private final Format format;
    private final DrawingBuilder drawing = new DrawingBuilder();
    private final Marking marking;
    private final Extent extent;
    private final Silhouette silhouette;
    private final Figures figures;
    private final Labels labels;
    private final Lettering lettering;
    private final Remarks remarks;

    SideViewRenderer(Vehicle vehicle, SideViewOptions options, Figures figures, Format format) {
        this.vehicle = vehicle;
        this.options = options;
        this.format = format;
        this.marking = Marking.of(options);
        this.extent = Extent.of(vehicle, format, !options.ghosts().isEmpty());
        this.silhouette = new Silhouette(vehicle, format == Format.THUMBNAIL);
        this.figures = figures;
        this.remarks = new Remarks(options, marking);
        this.lettering = new Lettering(extent.em());
        this.labels = new Labels(
                vehicle, remarks, marking, drawing, figures, lettering, extent, silhouette.spine(0.4 * extent.em()));
    }

    Sheet sheet() {
        if (format != Format.THUMBNAIL) {
            setting();
        }
        drawing.line(LayerId.GROUND, "ground", new Point(extent.left(), 0), new Point(extent.right(), 0));
        body();
        new Wheels(vehicle, drawing, marking).draw(format != Format.THUMBNAIL);
        if (format != Format.THUMBNAIL) {
            lettering();
        }
        return extent.sheet(drawing, format);
    }

    private void setting() {
        Grid.draw(vehicle, extent, drawing);
        new GroundPlanes(vehicle, drawing, marking, extent).draw();
        Double d = vehicle.wheelDiameter();
        Double height = vehicle.find(Reading.OVERALL_HEIGHT);
        if (d != null) {
            WheelRulers rulers = new WheelRulers(d, drawing);
            rulers.along(vehicle.wheelbase());
            if (height != null && format == Format.WIDE) {
                rulers.upwards(extent.rulerX(), height);
            }
        }
        centreLine();
        new Ghosts(vehicle, options, drawing, labels).draw(format == Format.WIDE);
    }

    private void centreLine() {
        vehicle.tyre(Axle.FRONT)
                .ifPresent(front -> vehicle.tyre(Axle.REAR).ifPresent(rear -> {
                    double beyond = 0.18 * vehicle.nominalDiameter();
                    PathBuilder path = new PathBuilder()
                            .moveTo(-front.radius() - beyond, front.centreHeight())
                            .lineTo(front.centre())
                            .lineTo(rear.centre())
                            .lineTo(rear.x() + rear.radius() + beyond, rear.centreHeight());
                    drawing.stroke(LayerId.GUIDES, "guide", path);
                }));
    }

    private void body() {
        List<Silhouette.Piece> pieces = silhouette.pieces();
        for (Silhouette.Piece piece : pieces) {
            drawing.stroke(LayerId.BODY, marking.pen(piece.pen(), piece.part()), piece.path());
        }
        LowerBody lower = new LowerBody(vehicle, silhouette, drawing, marking);
        lower.draw(!pieces.isEmpty());
        if (pieces.isEmpty()) {
            ConstructionLines.draw(vehicle, drawing, marking);
        }
        Cabin cabin = new Cabin(vehicle, drawing, marking, format == Format.THUMBNAIL);
        if (format == Format.THUMBNAIL) {
            cabin.glassAlone();
        } else {
            lower.underbody();
            cabin.draw();
        }
    }

    private void lettering() {
        double em = extent.em();
        boolean wide = format == Format.WIDE;
        heightLine(wide);
        labels.unscaled();
        labels.wheelCount(-1.25 * em, -2.7 * em);
        new DimensionLines(vehicle, drawing, marking, figures, remarks, lettering, em, wide)
                .draw(-4.6 * em, wide ? -7.1 * em : -5.9 * em);
        labels.screenAim(wide);
        if (wide) {
            labels.heightCount();
            labels.angles();
            clearance(em);
            labels.callouts();
        }
    }

    private void heightLine(boolean wide) {
        Double height = vehicle.find(Reading.OVERALL_HEIGHT);
        if (height == null) {
            return;
        }
        double em = extent.em();
        double from = wide
                ? vehicle.landmark(Landmark.ROOF_APEX).map(Point::x).orElse(vehicle.wheelbase() * 0.5)
                : extent.left();
        drawing.line(
                LayerId.GUIDES,
                marking.pen("guide", Part.HEIGHT),
                new Point(from, height),
                new Point(extent.right(), height));
        double x = wide ? extent.right() - 0.5 * em : vehicle.wheelbase() / 2;
        labels.height(height, x, !wide);
    }

    private void clearance(double em) {
        Double clearance = vehicle.find(Reading.GROUND_CLEARANCE);
        if (clearance != null) {
            double x = vehicle.wheelbase() * 0.66;
            new DimensionLines(vehicle, drawing, marking, figures, remarks, lettering, em, true)
                    .clearance(x, clearance);
        }
    }
}

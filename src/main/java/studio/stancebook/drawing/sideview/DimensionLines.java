package studio.stancebook.drawing.sideview;

import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.dimension.Reading;
import studio.stancebook.drawing.Lettering;
import studio.stancebook.drawing.Overlay;
import studio.stancebook.drawing.Phrases;
import studio.stancebook.drawing.TextLine;

/** The lengths under the ground line, each with its code and, as far as it fits, its name. */
final class DimensionLines {

    private final Vehicle vehicle;
    private final DrawingBuilder drawing;
    private final Marking marking;
    private final Figures figures;
    private final Remarks remarks;
    private final Lettering lettering;
    private final double em;
    private final boolean worded;

    DimensionLines(
            Vehicle vehicle,
            DrawingBuilder drawing,
            Marking marking,
            Figures figures,
            Remarks remarks,
            Lettering lettering,
            double emMm,
            boolean worded) {
        this.vehicle = vehicle;
        this.drawing = drawing;
        this.marking = marking;
        this.figures = figures;
        this.remarks = remarks;
        this.lettering = lettering;
        this.em = emMm;
        this.worded = worded;
    }

    /** Overhangs and wheelbase in one row, the overall length in the next. */
    void draw(double upperZ, double lowerZ) {
        double end = vehicle.wheelbase();
        Double front = vehicle.find(Reading.FRONT_OVERHANG);
        Double rear = vehicle.find(Reading.REAR_OVERHANG);
        row(0, end, upperZ, Reading.WHEELBASE, "wheelbase", Part.WHEELBASE);
        if (front != null) {
            row(-front, 0, upperZ, Reading.FRONT_OVERHANG, "front-overhang", Part.FRONT_OVERHANG);
        }
        if (rear != null) {
            row(end, end + rear, upperZ, Reading.REAR_OVERHANG, "rear-overhang", Part.REAR_OVERHANG);
        }
        if (front != null && rear != null) {
            row(-front, end + rear, lowerZ, Reading.OVERALL_LENGTH, "overall-length", Part.LENGTH);
        }
    }

    private void row(double from, double to, double z, Reading reading, String phrase, Part part) {
        TextLine label = label((from + to) / 2, z, to - from, candidates(reading, phrase), part);
        PathBuilder path = new PathBuilder();
        double stop = 0.45 * em;
        path.moveTo(from, z + stop).lineTo(from, z - stop).moveTo(to, z + stop).lineTo(to, z - stop);
        if (label == null) {
            path.moveTo(from, z).lineTo(to, z);
        } else {
            double gap = lettering.widthOf(label.text()) / 2 + 0.4 * em;
            path.moveTo(from, z)
                    .lineTo(label.x() - gap, z)
                    .moveTo(label.x() + gap, z)
                    .lineTo(to, z);
        }
        drawing.stroke(LayerId.DIMENSIONS, marking.pen("dimension", part), path);
        drawing.stroke(LayerId.DIMENSIONS, marking.pen("slash", part), slashes(from, to, z));
    }

    private PathBuilder slashes(double from, double to, double z) {
        double half = 0.2 * em;
        return new PathBuilder()
                .moveTo(from - half, z - half)
                .lineTo(from + half, z + half)
                .moveTo(to - half, z - half)
                .lineTo(to + half, z + half);
    }

    /** From the fullest to the shortest way to say it; in wheels alone where there is no scale. */
    private List<String> candidates(Reading reading, String phrase) {
        String mm = figures.label(reading);
        String wheels = figures.wheels(reading);
        String base = "drawing.dimension." + phrase;
        if (mm == null) {
            return wheels == null
                    ? List.of()
                    : List.of(
                            Phrases.of(base + ".wheels", wheels),
                            Phrases.of("drawing.dimension.wheels", wheels),
                            wheels);
        }
        return List.of(Phrases.of(base, mm), Phrases.of(base + ".code", mm), mm);
    }

    private @Nullable TextLine label(double x, double z, double span, List<String> candidates, Part part) {
        for (String text : candidates) {
            TextLine words = new TextLine(marking.pen("dimension-word", part), x, -z + 0.34 * em, "middle", text);
            if (lettering.widthOf(text) + 1.8 * em <= span && put(words)) {
                verdict(x, z, part);
                return words;
            }
        }
        return null;
    }

    /** The verdict in words under the label of a marked dimension. */
    private void verdict(double x, double z, Part part) {
        String text = remarks.verdict(part);
        TextLine words = new TextLine(marking.pen("dimension-word", part), x, -z + 1.45 * em, "middle", text);
        if (worded && !text.isEmpty()) {
            put(words);
        }
    }

    /** The ground clearance as an upright dimension at {@code x}. */
    void clearance(double x, double clearance) {
        double stop = 0.5 * em;
        PathBuilder path = new PathBuilder()
                .moveTo(x - stop, clearance)
                .lineTo(x + stop, clearance)
                .moveTo(x, 0)
                .lineTo(x, clearance);
        drawing.stroke(LayerId.DIMENSIONS, marking.pen("dimension", Part.CLEARANCE), path);
        double half = 0.2 * em;
        PathBuilder slash = new PathBuilder().moveTo(x - half, clearance - half).lineTo(x + half, clearance + half);
        drawing.stroke(LayerId.DIMENSIONS, marking.pen("slash", Part.CLEARANCE), slash);
        String mm = figures.label(Reading.GROUND_CLEARANCE);
        String wheels = figures.wheels(Reading.GROUND_CLEARANCE);
        if (mm == null && wheels == null) {
            return;
        }
        String figure = mm == null
                ? Phrases.of("drawing.dimension.wheels", wheels == null ? "" : wheels)
                : Phrases.of("drawing.dimension.clearance", mm);
        if (!clearanceWords(x, clearance, figure + remarks.after(Part.CLEARANCE))) {
            clearanceWords(x, clearance, figure);
        }
    }

    /** Behind the upright line, else ahead of it, between the tyres. */
    private boolean clearanceWords(double x, double clearance, String text) {
        double gap = 0.5 * em;
        double tyre = vehicle.nominalDiameter() / 2;
        double width = gap + lettering.widthOf(text);
        double z = clearance / 2 - 0.34 * em;
        String pen = marking.pen("dimension-word", Part.CLEARANCE);
        boolean behind = x + width < vehicle.wheelbase() - tyre;
        boolean ahead = x - width > tyre;
        return (behind && put(new TextLine(pen, x + gap, -z, "start", text)))
                || (ahead && put(new TextLine(pen, x - gap, -z, "end", text)));
    }

    private boolean put(TextLine words) {
        boolean free = lettering.take(words);
        if (free) {
            drawing.words(Overlay.DIMENSIONS, words);
        }
        return free;
    }
}

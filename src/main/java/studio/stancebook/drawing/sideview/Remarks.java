package studio.stancebook.drawing.sideview;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.drawing.Phrases;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;

/** What is said of marked parts, so that no verdict is told by colour alone. */
final class Remarks {

    private final SideViewOptions options;
    private final Marking marking;

    Remarks(SideViewOptions options, Marking marking) {
        this.options = options;
        this.marking = marking;
    }

    /** The first marked measure that speaks of a part; null for a part that is not marked. */
    @Nullable
    Measure measureOf(Part part) {
        if (!marking.marked(part)) {
            return null;
        }
        Collection<String> flagged = marking.outside().contains(part) ? options.outside() : options.tooClose();
        return MeasureRegistry.builtIn().all().stream()
                .filter(measure -> part.measures().contains(measure.key()) && flagged.contains(measure.key()))
                .findFirst()
                .orElse(null);
    }

    /** The verdict of a part in words, or the remark on it; empty for a part that is not marked. */
    String verdict(Part part) {
        Measure measure = measureOf(part);
        if (measure == null) {
            return "";
        }
        String remark = options.remarks().get(measure.key());
        String said = remark != null
                ? remark
                : Phrases.of(marking.outside().contains(part) ? "drawing.outside" : "drawing.too-close");
        return part.isOwn(measure.key()) ? said : measure.name() + " " + said;
    }

    /** The classes of a pen for the figure of some measures, whatever else is marked of the part. */
    String pen(String pen, String... measureKeys) {
        if (Arrays.stream(measureKeys).anyMatch(options.outside()::contains)) {
            return pen + " out";
        }
        return Arrays.stream(measureKeys).anyMatch(options.tooClose()::contains) ? pen + " unsure" : pen;
    }

    /** As {@link #verdict}, to be written behind a figure. */
    String after(Part part) {
        String verdict = verdict(part);
        return verdict.isEmpty() ? "" : ", " + verdict;
    }

    /** What stands under the drawing: what the kinds of line mean, and what they mark. */
    List<String> captions(Sheet sheet) {
        List<String> captions = new ArrayList<>();
        if (sheet.has("drawn-in")) {
            captions.add(Phrases.of("drawing.drawn-in"));
        }
        if (!options.outside().isEmpty()) {
            captions.add(Phrases.of("drawing.red-tape", names(options.outside())));
        }
        if (!options.tooClose().isEmpty()) {
            captions.add(Phrases.of("drawing.hatched", names(options.tooClose())));
        }
        return captions;
    }

    /** The names in the order of the registry; a studio's own ratio, which no part shows, by its key. */
    private static String names(Collection<String> keys) {
        List<String> names = new ArrayList<>();
        MeasureRegistry.builtIn().all().stream()
                .filter(measure -> keys.contains(measure.key()))
                .forEach(measure -> names.add(measure.name()));
        keys.stream()
                .filter(key -> MeasureRegistry.builtIn().find(key).isEmpty())
                .sorted()
                .forEach(names::add);
        return String.join("; ", names);
    }
}

package studio.stancebook.drawing.sideview;

import java.util.List;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.drawing.Sheet;

/**
 * A side view to scale, the vehicle facing left, drawn from whatever is recorded. What is not recorded is left out, or,
 * where the picture needs a line to hold together, drawn in with a light pen (studio decision 0032); a figure is never
 * guessed.
 *
 * @param id unique on the page
 * @param title of the picture
 * @param description the picture in words, for those who do not see it
 * @param wide for pages from 860 px
 * @param narrow for smaller ones
 * @param figures the same numbers as a table
 * @param unscaled true when the sketch carries no dimension
 * @param captions what the kinds of line mean and mark, one sentence each
 */
public record SideView(
        String id,
        String title,
        String description,
        Sheet wide,
        Sheet narrow,
        List<Figure> figures,
        boolean unscaled,
        List<String> captions) {

    public SideView {
        figures = List.copyOf(figures);
        captions = List.copyOf(captions);
    }

    /** The side view of a dimension set. */
    public static SideView of(DimensionSet dimensions, SideViewOptions options) {
        Vehicle vehicle = Vehicle.of(dimensions);
        Marking marking = Marking.of(options);
        Figures figures = new Figures(dimensions, marking);
        List<Figure> table = figures.table();
        Sheet wide = new SideViewRenderer(vehicle, options, figures, Format.WIDE).sheet();
        return new SideView(
                options.id(),
                options.title(),
                Description.of(vehicle, table),
                wide,
                new SideViewRenderer(vehicle, options, figures, Format.NARROW).sheet(),
                table,
                vehicle.unscaled(),
                new Remarks(options, marking).captions(wide));
    }

    /** The vehicle alone, small: less than 4 KB as SVG. */
    public static Sheet thumbnail(DimensionSet dimensions) {
        SideViewOptions options = SideViewOptions.of("t", "");
        Figures figures = new Figures(dimensions, Marking.of(options));
        return new SideViewRenderer(Vehicle.of(dimensions), options, figures, Format.THUMBNAIL).sheet();
    }

    public String titleId() {
        return id + "-title";
    }

    public String descriptionId() {
        return id + "-description";
    }

    /** Both ids, as a label refers to them. */
    public String labelledBy() {
        return titleId() + " " + descriptionId();
    }
}

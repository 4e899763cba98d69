package studio.stancebook.underlay;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;
import studio.stancebook.paper.Group;
import studio.stancebook.paper.Ink;
import studio.stancebook.paper.Mark;
import studio.stancebook.paper.VectorPage;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;

/** Construction sheets to draw over, true to scale. */
@Component
public class Underlays {

    private static final double OUTLINE_EM = 0.18;

    private final Frameworks frameworks;
    private final Clock clock;

    Underlays(Frameworks frameworks, Clock clock) {
        this.frameworks = frameworks;
        this.clock = clock;
    }

    /**
     * One sheet.
     *
     * @param framework what it is drawn from
     * @param denominator of its scale
     * @param page as it is printed
     */
    public record Underlay(Framework framework, int denominator, VectorPage page) {}

    /**
     * Draws a sheet.
     *
     * @throws studio.stancebook.problem.Impossible naming the field that cannot be: a size that is missing, or a scale at
     *     which the drawing does not fit the paper, with what does fit
     */
    public Underlay draw(UnderlayOrder order, SignedIn who) {
        Framework framework = frameworks.of(order, who);
        Layout layout = Layout.of(framework, order.paper(), order.denominator());
        return new Underlay(framework, layout.denominator(), page(framework, layout, LocalDate.now(clock)));
    }

    static VectorPage page(Framework framework, Layout layout, LocalDate date) {
        Canvas canvas = new Canvas(layout);
        new Construction(framework, layout, canvas).draw();
        String description = description(framework, layout);
        List<Group> groups = new ArrayList<>();
        groups.add(new Group("construction", Group.StructureRole.FIGURE, description, canvas.marks()));
        if (!framework.outline().isEmpty()) {
            groups.add(outline(framework, layout));
        }
        groups.addAll(new FigureTable(framework, layout, date).groups());
        return new VectorPage(
                "Underlay: " + framework.title() + ", 1:" + layout.denominator(),
                description,
                layout.paper().widthMm(),
                layout.paper().heightMm(),
                null,
                groups);
    }

    /** A group of its own in SVG, a layer that a reader can switch off in PDF. */
    private static Group outline(Framework framework, Layout layout) {
        double factor = 1.0 / layout.denominator();
        Ink ink = Ink.line(Canvas.INK, OUTLINE_EM * layout.em());
        List<Mark> lines = framework.outline().stream()
                .<Mark>map(path -> new Mark.Trace(path.placed(factor, layout.x(0), layout.y(0)), ink))
                .toList();
        return new Group("outline", Group.StructureRole.FIGURE, "The outline of " + framework.subject(), lines)
                .asLayer("Outline");
    }

    private static String description(Framework framework, Layout layout) {
        String values = framework.proportions().values().stream()
                .map(p -> FigureTable.name(p) + " " + NumberText.fixed(p.value(), p.decimals())
                        + (p.degrees() ? " degrees" : " wheels"))
                .collect(Collectors.joining(", "));
        return "Construction sheet facing left at 1:" + layout.denominator() + ", tyre diameter "
                + ShownUnits.text(framework.diameter(), 0) + ", wheelbase "
                + ShownUnits.text(framework.wheelbase(), 0) + ". " + values + ".";
    }
}

package studio.stancebook.drawing.rendering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import studio.stancebook.PdfWords;
import studio.stancebook.demo.InventedCatalogue;
import studio.stancebook.demo.InventedVehicle;
import studio.stancebook.demo.Typical;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionChecks;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.ImpossibleDimensions;
import studio.stancebook.dimension.Unit;
import studio.stancebook.drawing.Sheet;
import studio.stancebook.drawing.sideview.SideView;
import studio.stancebook.drawing.sideview.SideViewOptions;
import studio.stancebook.drawing.sideview.Sketches;
import studio.stancebook.geometry.Point;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.paper.Group;
import studio.stancebook.paper.LetterWidths;
import studio.stancebook.paper.PathReader;
import studio.stancebook.paper.PdfWriter;
import studio.stancebook.paper.VectorPage;

/**
 * What is written, read back from the markup and from PDF: no words lie over others, and names and codes of dimensions lie
 * over no line of the vehicle. Widths are those of the font file. A page shows words at 1 em of the sheet at the most, so the
 * narrow sheet stands for every page under 860 px, 360 px among them, and the wide one for all others and for print.
 */
class DrawnLabelsTest {

    private static final Set<String> ALL =
            MeasureRegistry.builtIn().all().stream().map(Measure::key).collect(Collectors.toSet());
    private static final Set<String> VEHICLE = Set.of("side-view__body", "side-view__wheels", "side-view__detail");
    private static final int RANDOM_SETS = 300;

    private final Renderer renderer = new Renderer();

    record Sample(String name, DimensionSet set) {
        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Sample> samples() {
        Stream<Sample> invented =
                InventedCatalogue.vehicles().stream().map(one -> new Sample(one.name(), one.dimensions()));
        Stream<Sample> proposed = InventedCatalogue.vehicles().stream()
                .map(InventedVehicle::segment)
                .distinct()
                .map(segment -> new Sample("typical " + segment, Typical.of(segment)));
        Stream<Sample> sketches = Stream.of(
                new Sample("off-roader", Sketches.offRoader()),
                new Sample("bare", Sketches.bare()),
                new Sample("unscaled", Sketches.unscaled()));
        Stream<Sample> random =
                IntStream.range(0, RANDOM_SETS).mapToObj(seed -> new Sample("random " + seed, random(seed)));
        return Stream.of(invented, proposed, sketches, random).flatMap(stream -> stream);
    }

    /** An invented vehicle with lengths and heights stretched and some values left out, until it passes the checks. */
    private static DimensionSet random(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        while (true) {
            DimensionSet from = InventedCatalogue.vehicles()
                    .get(random.nextInt(InventedCatalogue.vehicles().size()))
                    .dimensions();
            double along = random.nextDouble(0.75, 1.35);
            double up = random.nextDouble(0.75, 1.3);
            DimensionSetBuilder builder = from.toBuilder();
            from.scalars().forEach((dimension, value) -> {
                if (dimension.unit() == Unit.MM) {
                    builder.set(dimension, value * (upright(dimension) ? up : along));
                }
            });
            from.landmarks().forEach((mark, at) -> builder.set(mark, at.x() * along, at.z() * up));
            from.polylines()
                    .forEach((line, points) -> builder.set(
                            line,
                            points.stream()
                                    .map(point -> new Point(point.x() * along, point.z() * up))
                                    .toList()));
            double gaps = random.nextDouble(0.6);
            for (String key : from.valueKeys()) {
                if (!key.equals("wheelbase") && random.nextDouble() < gaps) {
                    builder.without(key);
                }
            }
            try {
                DimensionSet set = builder.build();
                DimensionChecks.requireSound(set, List.of());
                return set;
            } catch (ImpossibleDimensions unsound) {
                // Another one: what was stretched left its plausible range or no longer closes.
            }
        }
    }

    private static boolean upright(Dimension dimension) {
        return dimension.code().startsWith("H") || dimension.key().toLowerCase().contains("height");
    }

    private static SideView view(Sample sample, Set<String> outside) {
        return SideView.of(sample.set(), SideViewOptions.of("a", sample.name()).withOutside(outside));
    }

    @ParameterizedTest
    @MethodSource("samples")
    void labelsKeepClearOnPages(Sample sample) {
        for (Set<String> outside : List.of(Set.<String>of(), ALL)) {
            NodeList sheets =
                    Renderer.parsed(renderer.sideView(view(sample, outside))).getElementsByTagName("svg");
            assertEquals(2, sheets.getLength());
            for (int i = 0; i < 2; i++) {
                assertEquals(List.of(), faults((Element) sheets.item(i)), i == 0 ? "wide" : "narrow");
            }
        }
    }

    /** As wide as an A4 page laid across leaves room for, and as wide as on the A3 review sheet. */
    @Test
    void labelsKeepClearOnPaper() {
        for (Sample sample : samples().toList()) {
            for (double widthMm : new double[] {190, 236, 277}) {
                Sheet sheet = view(sample, ALL).wide();
                Group figure = new SheetFigure(sheet, widthMm, 10, 10, 0.82, "#ffffff").figure("A side view");
                byte[] file = PdfWriter.of(new VectorPage("Drawn", "", 297, 210, null, List.of(figure)));
                List<PdfWords.Line> lines = PdfWords.of(file);
                assertTrue(lines.size() >= 1, sample.name());
                assertEquals(List.of(), PdfWords.collisions(lines), sample.name());
            }
        }
    }

    private record Written(String text, Rectangle2D box, boolean dimension) {}

    private static List<String> faults(Element sheet) {
        double em = Double.parseDouble(sheet.getAttribute("font-size"));
        String[] view = sheet.getAttribute("viewBox").split(" ");
        Rectangle2D frame = new Rectangle2D.Double(
                Double.parseDouble(view[0]) - 1,
                Double.parseDouble(view[1]) - 1,
                Double.parseDouble(view[2]) + 2,
                Double.parseDouble(view[3]) + 2);
        List<Written> written = written(sheet, em);
        Map<String, List<double[]>> lines = vehicleLines(sheet);
        List<String> faults = new ArrayList<>();
        for (int i = 0; i < written.size(); i++) {
            Written one = written.get(i);
            if (!frame.contains(one.box())) {
                faults.add("off the sheet: " + one.text());
            }
            for (Written other : written.subList(i + 1, written.size())) {
                if (one.box().intersects(other.box())) {
                    faults.add(one.text() + " lies over " + other.text());
                }
            }
            if (one.dimension()) {
                lines.forEach((cls, segments) -> {
                    if (segments.stream().anyMatch(s -> one.box().intersectsLine(s[0], s[1], s[2], s[3]))) {
                        faults.add(one.text() + " lies over " + cls);
                    }
                });
            }
        }
        return faults;
    }

    /** From the top of a capital to the foot of a tail: 0.72 em above the base line and 0.18 em below, as PDF words. */
    private static List<Written> written(Element sheet, double em) {
        List<Written> written = new ArrayList<>();
        NodeList texts = sheet.getElementsByTagName("text");
        for (int i = 0; i < texts.getLength(); i++) {
            Element text = (Element) texts.item(i);
            String cls = text.getAttribute("class");
            boolean strong = cls.startsWith("strong") || cls.endsWith(" out");
            double width = LetterWidths.em(text.getTextContent(), strong) * em;
            double x = Double.parseDouble(text.getAttribute("x"));
            double y = Double.parseDouble(text.getAttribute("y"));
            double left = switch (text.getAttribute("text-anchor")) {
                case "start" -> x;
                case "end" -> x - width;
                default -> x - width / 2;
            };
            written.add(new Written(
                    text.getTextContent(),
                    new Rectangle2D.Double(left, y - 0.72 * em, width, 0.9 * em),
                    cls.startsWith("dimension-word")));
        }
        return written;
    }

    private static Map<String, List<double[]>> vehicleLines(Element sheet) {
        Map<String, List<double[]>> lines = new HashMap<>();
        NodeList groups = sheet.getElementsByTagName("g");
        for (int i = 0; i < groups.getLength(); i++) {
            Element group = (Element) groups.item(i);
            if (VEHICLE.contains(group.getAttribute("class"))) {
                NodeList paths = group.getElementsByTagName("path");
                for (int j = 0; j < paths.getLength(); j++) {
                    Element path = (Element) paths.item(j);
                    lines.computeIfAbsent(path.getAttribute("class"), cls -> new ArrayList<>())
                            .addAll(segments(path.getAttribute("d")));
                }
            }
        }
        return lines;
    }

    private static List<double[]> segments(String d) {
        Path2D path = PathReader.shape(d);
        List<double[]> segments = new ArrayList<>();
        double[] at = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator one = path.getPathIterator(null, 2); !one.isDone(); one.next()) {
            int kind = one.currentSegment(at);
            if (kind == PathIterator.SEG_LINETO) {
                segments.add(new double[] {x, y, at[0], at[1]});
            }
            x = at[0];
            y = at[1];
        }
        return segments;
    }
}

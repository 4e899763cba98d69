package studio.stancebook.catalogue.web;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.PackageIssue;
import studio.stancebook.catalogue.PackageView;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.classes.ClassSnapshots;
import studio.stancebook.measure.OffRoadTable;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.measure.Subject;

/** One benchmark package: its side view, what is recorded, and its place in its class. */
@Controller
class PackagePage {

    private final Catalogue catalogue;
    private final ClassSnapshots snapshots;
    private final StudioMeasures measures;
    private final ValueNames names;

    PackagePage(Catalogue catalogue, ClassSnapshots snapshots, StudioMeasures measures, ValueNames names) {
        this.catalogue = catalogue;
        this.snapshots = snapshots;
        this.measures = measures;
        this.names = names;
    }

    @GetMapping("/packages/{id}")
    String show(@PathVariable long id, Model model) {
        PackageView view = catalogue.get(id);
        ClassSnapshot snapshot = snapshots.of(view.segment());
        List<MeasureLine> all = lines(view, snapshot);
        model.addAttribute("it", view);
        model.addAttribute("drawing", PackageDrawing.of(view));
        model.addAttribute("changed", Formats.time(view.changedAt()));
        model.addAttribute("dimensions", DimensionLine.all(view));
        model.addAttribute(
                "measures", all.stream().filter(MeasureLine::measured).toList());
        model.addAttribute(
                "unmeasured", all.stream().filter(line -> !line.measured()).toList());
        model.addAttribute("classSize", snapshot.packages());
        model.addAttribute(
                "queries", view.queries().stream().map(this::queryLine).toList());
        model.addAttribute("apart", valuesApart(view));
        model.addAttribute("values", names.all(view.dimensions()));
        model.addAttribute("offRoad", OffRoadTable.of(view.dimensions()));
        return "catalogue/benchmark";
    }

    private List<MeasureLine> lines(PackageView view, ClassSnapshot snapshot) {
        Set<String> apart = view.valuesSetAside().keySet();
        List<MeasureLine> lines = new ArrayList<>();
        measures.current()
                .valuesOf(new Subject(view.dimensions()))
                .forEach((measure, value) ->
                        lines.add(MeasureLine.of(measure, value, snapshot, apart.contains(measure.key()))));
        return lines;
    }

    /** @param about the name of the value it is about; empty for the whole package, and where the question begins with it */
    record QueryLine(PackageIssue query, String about, String settled, boolean whole) {}

    private QueryLine queryLine(PackageIssue query) {
        PackageIssue.Settlement settlement = query.settlement();
        String key = query.valueKey();
        String name = key == null ? "" : names.of(key);
        return new QueryLine(
                query,
                query.question().startsWith(name) ? "" : name,
                settlement == null ? "" : settlement.by() + ", " + Formats.time(settlement.at()),
                key == null);
    }

    /** A single value that is set aside. */
    record Apart(String key, String name, String reason, String by, String at) {}

    private List<Apart> valuesApart(PackageView view) {
        return view.valuesSetAside().entrySet().stream()
                .map(entry -> new Apart(
                        entry.getKey(),
                        names.of(entry.getKey()),
                        entry.getValue().reason(),
                        entry.getValue().by(),
                        Formats.time(entry.getValue().at())))
                .sorted(Comparator.comparing(Apart::name))
                .toList();
    }
}

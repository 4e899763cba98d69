package studio.stancebook.catalogue.web;

import java.util.List;
import studio.stancebook.classes.ClassSnapshot;
import studio.stancebook.measure.Measure;
import studio.stancebook.measure.MeasureRegistry;
import studio.stancebook.quantity.ShownUnits;
import studio.stancebook.statistics.QuantileType;

/**
 * The figures of a class, measure by measure; made once for a class and kept with it.
 *
 * @param lines the measures that somebody has
 * @param unmeasured names of the others
 */
record ClassTable(List<ClassLine> lines, List<String> unmeasured) {

    ClassTable {
        lines = List.copyOf(lines);
        unmeasured = List.copyOf(unmeasured);
    }

    /** What the table depends on beside the class. */
    record TableState(MeasureRegistry registry, QuantileType type, ShownUnits units) {}

    static ClassTable of(ClassSnapshot snapshot, List<Measure> measures, QuantileType type) {
        List<ClassLine> all = measures.stream()
                .map(measure -> ClassLine.of(measure, snapshot, type))
                .toList();
        return new ClassTable(
                all.stream().filter(ClassLine::any).toList(),
                all.stream().filter(line -> !line.any()).map(ClassLine::name).toList());
    }
}

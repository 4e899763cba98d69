package studio.stancebook.compare.web;

import studio.stancebook.compare.Difference;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.measure.Measure;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;

/** A difference as the page writes it; empty where there is nothing to write. */
record DifferenceLine(
        String measure,
        String definition,
        String name,
        String unit,
        String reference,
        String value,
        String difference,
        String mm,
        String spreads) {

    static DifferenceLine of(Difference one) {
        Measure measure = one.measure();
        String unit =
                measure.key().endsWith("-in-wheels") ? "wheels" : measure.unit().symbol();
        return new DifferenceLine(
                LeaningAngles.words(measure.key(), measure.name()),
                LeaningAngles.words(measure.key(), measure.definition()),
                one.name(),
                unit,
                NumberText.fixed(LeaningAngles.value(measure.key(), one.reference()), measure.decimals())
                        .replace('-', '\u2212'),
                NumberText.fixed(LeaningAngles.value(measure.key(), one.value()), measure.decimals())
                        .replace('-', '\u2212'),
                signed(LeaningAngles.change(measure.key(), one.difference()), measure.decimals()),
                one.mm().isPresent()
                        ? ShownUnits.signed(one.mm().getAsDouble(), 0).replace('-', '\u2212')
                        : "",
                one.spreads().isPresent() ? signed(one.spreads().getAsDouble(), 1) : "");
    }

    private static String signed(double value, int decimals) {
        return NumberText.signed(value, decimals).replace('-', '\u2212');
    }
}

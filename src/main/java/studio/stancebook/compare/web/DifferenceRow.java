package studio.stancebook.compare.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.compare.Difference;
import studio.stancebook.dimension.LeaningAngles;
import studio.stancebook.measure.Measure;
import studio.stancebook.quantity.NumberText;
import studio.stancebook.quantity.ShownUnits;

/**
 * One measure of all that are compared, as the page writes it.
 *
 * @param reference the value of the reference
 * @param others a cell for each of the others, in their order; null where it has no such value
 */
record DifferenceRow(String measure, String definition, String unit, String reference, List<@Nullable Cell> others) {

    /**
     * The value of one and how it differs; empty where there is nothing to write.
     *
     * @param difference in the measure's unit
     * @param length in the reader's unit of length, with that
     * @param spreads in robust standard deviations
     */
    record Cell(String value, String difference, String length, String spreads) {

        static Cell of(Difference one) {
            Measure measure = one.measure();
            return new Cell(
                    fixed(measure, one.value()),
                    signed(LeaningAngles.change(measure.key(), one.difference()), measure.decimals()),
                    one.mm().isPresent()
                            ? minus(ShownUnits.signed(one.mm().getAsDouble(), 0)) + " "
                                    + ShownUnits.current().length().symbol()
                            : "",
                    one.spreads().isPresent() ? signed(one.spreads().getAsDouble(), 1) : "");
        }

        /** Whether the length says more; public because the page asks. */
        public boolean lengthy() {
            return !length.isEmpty();
        }

        /** Whether the class says how unusual it is; public because the page asks. */
        public boolean unusual() {
            return !spreads.isEmpty();
        }
    }

    /** @param all of the measure, one for each of the others; at least one is there */
    static DifferenceRow of(List<@Nullable Difference> all) {
        Difference any = all.stream().filter(one -> one != null).findFirst().orElseThrow();
        Measure measure = any.measure();
        return new DifferenceRow(
                LeaningAngles.words(measure.key(), measure.name()),
                LeaningAngles.words(measure.key(), measure.definition()),
                measure.key().endsWith("-in-wheels") ? "wheels" : measure.unit().symbol(),
                fixed(measure, any.reference()),
                all.stream()
                        .<@Nullable Cell>map(one -> one == null ? null : Cell.of(one))
                        .toList());
    }

    private static String fixed(Measure measure, double value) {
        return NumberText.shown(LeaningAngles.value(measure.key(), value), measure.decimals());
    }

    private static String signed(double value, int decimals) {
        return minus(NumberText.signed(value, decimals));
    }

    private static String minus(String number) {
        return number.replace('-', '\u2212');
    }
}

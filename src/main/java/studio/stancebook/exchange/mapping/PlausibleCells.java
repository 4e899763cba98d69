package studio.stancebook.exchange.mapping;

import java.math.BigDecimal;
import java.util.function.UnaryOperator;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.DimensionSet;
import studio.stancebook.dimension.DimensionSetBuilder;
import studio.stancebook.dimension.RangeChecks;
import studio.stancebook.problem.FieldError;

/** The plausible ranges, applied to data that is brought in. */
public final class PlausibleCells {

    private static final BigDecimal MOST_UNCERTAINTY = new BigDecimal(500);

    private PlausibleCells() {}

    /**
     * The set without what is out of range, each with its problem; a wheelbase out of range is an error always.
     *
     * @param columnOf the column of a value, by its JSON name
     * @param textOf how the value is written
     */
    public static DimensionSet values(
            DimensionSet set, UnaryOperator<String> columnOf, UnaryOperator<String> textOf, Problems problems) {
        DimensionSetBuilder kept = set.toBuilder();
        for (FieldError error : RangeChecks.problemsOf(set)) {
            String key = error.field().replaceFirst("^uncertainties\\.", "").replaceFirst("\\[.*", "");
            if (key.equals(Dimension.WHEELBASE.key())) {
                problems.error(columnOf.apply(key), textOf.apply(key), error.message());
            } else {
                problems.unreadable(columnOf.apply(key), textOf.apply(key), error.message());
                kept.without(key);
            }
        }
        return kept.build();
    }

    static boolean uncertainty(BigDecimal value) {
        return value.signum() >= 0 && value.compareTo(MOST_UNCERTAINTY) <= 0;
    }
}

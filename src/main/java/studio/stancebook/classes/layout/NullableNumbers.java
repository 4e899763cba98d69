package studio.stancebook.classes.layout;

import java.sql.ResultSet;
import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/** Arrays of numbers of which some are missing: NULL in the database, NaN in memory and never further than here. */
public final class NullableNumbers {

    private NullableNumbers() {}

    public static Double[] of(double[] values) {
        Double[] boxed = new Double[values.length];
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(values[i])) {
                boxed[i] = values[i];
            }
        }
        return boxed;
    }

    public static double[] orNaN(@Nullable Object[] values) {
        double[] numbers = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            numbers[i] = values[i] instanceof Number number ? number.doubleValue() : Double.NaN;
        }
        return numbers;
    }

    /** The array in a column of a result; NaN for NULL. */
    public static double[] read(ResultSet result, String column) throws SQLException {
        return orNaN((Object[]) result.getArray(column).getArray());
    }
}

package studio.stancebook.classes.layout;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import studio.stancebook.dimension.Dimension;
import studio.stancebook.dimension.Origin;

/** The scalars of a package in the order of {@link Dimension}, which screening needs. */
public final class ScalarLayout implements ClassLayout {

    /** The only one. */
    public static final ScalarLayout INSTANCE = new ScalarLayout();

    private final List<String> keys =
            Arrays.stream(Dimension.values()).map(Dimension::key).toList();

    private ScalarLayout() {}

    @Override
    public List<String> keys() {
        return keys;
    }

    @Override
    public OptionalInt place(String key) {
        int place = keys.indexOf(key);
        return place < 0 ? OptionalInt.empty() : OptionalInt.of(place);
    }

    @Override
    public String fingerprint() {
        return "";
    }

    @Override
    public String columns() {
        return "p.scalars AS class_values, NULL AS text_one, NULL AS text_two";
    }

    @Override
    public double[] read(ResultSet row, Origin origin) throws SQLException {
        double[] kept = NullableNumbers.read(row, "class_values");
        double[] scalars = Arrays.copyOf(kept, keys.size());
        Arrays.fill(scalars, Math.min(kept.length, scalars.length), scalars.length, Double.NaN);
        return scalars;
    }
}

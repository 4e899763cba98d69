package studio.stancebook.classes;

import java.sql.ResultSet;
import java.sql.SQLException;
import studio.stancebook.classes.layout.ClassLayout;
import studio.stancebook.dimension.Origin;

/**
 * One package of a class while it is read or written; not kept in this form.
 *
 * @param modelYear 0 where there is none
 * @param origin ordinal of the origin
 * @param values every measure, NaN where there is none; not to be changed
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
public record ClassRow(long id, String name, int modelYear, int origin, double[] values) {

    /** From a row of a result with the columns that the layout reads, and id, name, model year and origin. */
    static ClassRow of(ResultSet result, ClassLayout layout) throws SQLException {
        Origin origin = Origin.valueOf(result.getString("origin"));
        return new ClassRow(
                result.getLong("id"),
                result.getString("name"),
                result.getInt("model_year"),
                origin.ordinal(),
                layout.read(result, origin));
    }
}

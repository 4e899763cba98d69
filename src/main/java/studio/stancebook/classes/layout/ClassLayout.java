package studio.stancebook.classes.layout;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.OptionalInt;
import studio.stancebook.dimension.Origin;

/** Which values of a package a class is made of, in which order, and how they are read. */
public interface ClassLayout {

    /** The keys of the values in their order. */
    List<String> keys();

    /** The place of a value, from 0; empty if there is none of this key. */
    OptionalInt place(String key);

    /** How many values. */
    default int size() {
        return keys().size();
    }

    /** What tells this layout from others in the named parameter {@code :layout}. */
    String fingerprint();

    /** Three columns of the table of packages {@code p}: an array of numbers and two texts. */
    String columns();

    /** The values of a row that has the three columns under the names {@code class_values}, {@code text_one} and
     * {@code text_two}. */
    double[] read(ResultSet row, Origin origin) throws SQLException;
}

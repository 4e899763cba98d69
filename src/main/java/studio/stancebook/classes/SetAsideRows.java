package studio.stancebook.classes;

import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import studio.stancebook.classes.layout.ClassLayout;
import studio.stancebook.classes.layout.ValuesApart;

/** The packages of a segment that are set aside or have values set aside, with every value that they record. */
@Component
public class SetAsideRows {

    private static final String SQL = "SELECT p.id, p.name, p.model_year, p.origin, p.measures AS class_values,"
            + " CASE WHEN p.measure_layout = :layout THEN NULL ELSE p.dimensions END AS text_one,"
            + " '" + ValuesApart.NONE + "' AS text_two"
            + " FROM package_apart a JOIN benchmark_package p ON p.id = a.package_id"
            + " WHERE a.segment_id = (SELECT id FROM segment WHERE segment_key = :segment) ORDER BY p.id";

    private final JdbcClient database;

    SetAsideRows(JdbcClient database) {
        this.database = database;
    }

    /** Reads those of the segment of a class, with the values that the class has, in the order of their ids. */
    public ClassRows of(ClassSnapshot snapshot) {
        ClassLayout layout = snapshot.layout();
        List<ClassRow> rows = database.sql(SQL)
                .param("layout", layout.fingerprint())
                .param("segment", snapshot.segment())
                .query((result, number) -> ClassRow.of(result, layout))
                .list();
        return ClassRows.none(layout.size()).changed(ClassChange.rows(rows), ClassUpdate.unseen());
    }
}

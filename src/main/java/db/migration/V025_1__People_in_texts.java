package db.migration;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.flywaydb.core.api.migration.BaseJavaMigration;
import org.flywaydb.core.api.migration.Context;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Adds ids to the names of people in texts, as script 025 does in columns: in the marks of who set which value, and beside
 * single values that are set aside. SQL cannot, since one text may name several people.
 */
public class V025_1__People_in_texts extends BaseJavaMigration {

    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final int AT_ONCE = 500;

    /** What adds ids to one text. */
    private interface Change {

        void addIds(JsonNode tree, Map<String, Long> ids);
    }

    @Override
    public void migrate(Context context) throws SQLException {
        Connection database = context.getConnection();
        Map<String, Long> ids = idsOfPeopleAloneWithTheirName(database);
        rewrite(database, "benchmark_package", "recorded", V025_1__People_in_texts::addToMarks, ids);
        rewrite(database, "benchmark_package", "values_set_aside", V025_1__People_in_texts::addToValuesAside, ids);
        rewrite(database, "proposal_revision", "recorded", V025_1__People_in_texts::addToMarks, ids);
    }

    private static Map<String, Long> idsOfPeopleAloneWithTheirName(Connection database) throws SQLException {
        Map<String, Long> ids = new HashMap<>();
        try (Statement statement = database.createStatement();
                ResultSet found = statement.executeQuery(
                        "SELECT display_name, MIN(id) FROM person GROUP BY display_name HAVING COUNT(*) = 1")) {
            while (found.next()) {
                ids.put(found.getString(1), found.getLong(2));
            }
        }
        return ids;
    }

    private static void rewrite(Connection database, String table, String column, Change change, Map<String, Long> ids)
            throws SQLException {
        String select = "SELECT id, " + column + " FROM " + table + " WHERE id > ? AND " + column
                + " <> '{}' ORDER BY id LIMIT " + AT_ONCE;
        String update = "UPDATE " + table + " SET " + column + " = ? WHERE id = ?";
        try (PreparedStatement reading = database.prepareStatement(select);
                PreparedStatement writing = database.prepareStatement(update)) {
            Map<Long, String> texts = next(reading, 0);
            while (!texts.isEmpty()) {
                long last = 0;
                for (Map.Entry<Long, String> text : texts.entrySet()) {
                    last = text.getKey();
                    JsonNode tree = JSON.readTree(text.getValue());
                    change.addIds(tree, ids);
                    writing.setString(1, JSON.writeValueAsString(tree));
                    writing.setLong(2, last);
                    writing.addBatch();
                }
                writing.executeBatch();
                texts = next(reading, last);
            }
        }
    }

    private static Map<Long, String> next(PreparedStatement reading, long after) throws SQLException {
        Map<Long, String> texts = new LinkedHashMap<>();
        reading.setLong(1, after);
        try (ResultSet found = reading.executeQuery()) {
            while (found.next()) {
                texts.put(found.getLong(1), found.getString(2));
            }
        }
        return texts;
    }

    /** {@code {"wheelbase": {"by": "...", "at": "..."}}} gets {@code byId}. */
    private static void addToMarks(JsonNode tree, Map<String, Long> ids) {
        for (JsonNode mark : tree) {
            Long id = ids.get(mark.path("by").asString(""));
            if (id != null && mark instanceof ObjectNode object) {
                object.put("byId", id);
            }
        }
    }

    /** {@code {"wheelbase": ["reason", "by", "at"]}} gets a fourth text. */
    private static void addToValuesAside(JsonNode tree, Map<String, Long> ids) {
        for (JsonNode value : tree) {
            Long id = ids.get(value.path(1).asString(""));
            if (id != null && value instanceof ArrayNode array) {
                array.add(id.toString());
            }
        }
    }
}

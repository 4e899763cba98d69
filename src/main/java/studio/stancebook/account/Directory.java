package studio.stancebook.account;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import studio.stancebook.access.Role;

/** Who is who, for other parts of the studio, which keep the ids of people only. */
@Component
public class Directory {

    private static final String SELECT = "SELECT id, display_name, role, active FROM person WHERE ";

    private final JdbcClient jdbc;

    Directory(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The person with an id; empty if there is none. */
    public Optional<PersonName> named(long id) {
        return jdbc.sql(SELECT + "id = :id")
                .param("id", id)
                .query(Directory::read)
                .optional();
    }

    /** The people with these ids, by id; an id that nobody has is left out. */
    public Map<Long, PersonName> named(Collection<Long> ids) {
        if (ids.isEmpty()) {
            return Map.of();
        }
        return jdbc.sql(SELECT + "id IN (:ids)").param("ids", ids).query(Directory::read).list().stream()
                .collect(Collectors.toMap(PersonName::id, Function.identity()));
    }

    /**
     * The names that people have now, by id.
     *
     * @param ids null for those of whom none is known
     */
    public Map<Long, String> names(Stream<@Nullable Long> ids) {
        Set<Long> known = ids.filter(Objects::nonNull).collect(Collectors.toSet());
        return named(known).values().stream().collect(Collectors.toMap(PersonName::id, PersonName::name));
    }

    /** Everybody of a role who can sign in, by name. */
    public List<PersonName> active(Role role) {
        return jdbc.sql(SELECT + "role = :role AND active ORDER BY display_name, id")
                .param("role", role.name())
                .query(Directory::read)
                .list();
    }

    private static PersonName read(ResultSet row, int number) throws SQLException {
        return new PersonName(
                row.getLong("id"),
                row.getString("display_name"),
                Role.valueOf(row.getString("role")),
                row.getBoolean("active"));
    }
}

package studio.stancebook.access;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Who did something, as it is kept beside what they did. What is shown is the name that the person has now; the name here is for
 * those of whom no id is known.
 *
 * @param personId the id of the person; null where only a name is known, as of what was recorded before people were kept by id
 * @param name the name that the person had at the time
 */
public record Author(@Nullable Long personId, String name) {

    /**
     * The name that a person has now, as SQL for a {@code @Formula} of an entity: the column with the id and a bracket follow.
     */
    public static final String NAME_NOW = "(SELECT n.display_name FROM person n WHERE n.id = ";

    /** @param names the names that people have now, by id */
    public String nameIn(Map<Long, String> names) {
        return personId == null ? name : names.getOrDefault(personId, name);
    }
}

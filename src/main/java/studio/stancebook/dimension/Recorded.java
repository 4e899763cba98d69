package studio.stancebook.dimension;

import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Who set a value, and when.
 *
 * @param personId the id of the person; null where only a name is known
 * @param by the name that the person had at the time
 * @param at when the value took its present form
 */
public record Recorded(@Nullable Long personId, String by, Instant at) {

    /** @param names the names that people have now, by id */
    Recorded named(Map<Long, String> names) {
        return personId == null ? this : new Recorded(personId, names.getOrDefault(personId, by), at);
    }
}

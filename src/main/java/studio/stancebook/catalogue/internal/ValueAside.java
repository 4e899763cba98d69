package studio.stancebook.catalogue.internal;

import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import studio.stancebook.access.Author;
import studio.stancebook.catalogue.SetAside;

/** That a package or a value of it is set aside, as it is kept. */
record ValueAside(String reason, Author by, Instant at) {

    @Nullable
    Long personId() {
        return by.personId();
    }

    /** @param names the names that people have now, by id */
    SetAside shown(Map<Long, String> names) {
        return new SetAside(reason, by.nameIn(names), at);
    }
}

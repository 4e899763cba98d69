package studio.stancebook.catalogue.internal;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;

/** Finds values that are far from the rest of their class. */
@Component
class Screening {

    /** For each of these packages the values that a person should look at. */
    Map<Long, List<RaisedQuery>> of(List<Long> ids, Collection<String> segments) {
        return new HashMap<>();
    }
}

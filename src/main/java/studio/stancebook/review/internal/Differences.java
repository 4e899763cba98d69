package studio.stancebook.review.internal;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.account.Deed;
import studio.stancebook.review.Change;

/** What a deed changed from what to what. */
final class Differences {

    private static final int LONGEST_FIELD = 100;

    /** More than a dimension set has values; so a line stays shorter than what the table takes. */
    static final int MOST = 300;

    private Differences() {}

    static List<Change> of(Deed deed) {
        List<Change> changes = new ArrayList<>();
        for (String field : fields(deed)) {
            String from = deed.before().get(field);
            String to = deed.after().get(field);
            if (!Objects.equals(from, to)) {
                changes.add(new Change(Written.words(field, LONGEST_FIELD), value(from), value(to)));
            }
        }
        return changes.size() <= MOST ? changes : shortened(changes);
    }

    private static Set<String> fields(Deed deed) {
        Map<String, String> longer = deed.after().isEmpty() ? deed.before() : deed.after();
        Set<String> fields = new LinkedHashSet<>(longer.keySet());
        fields.addAll(deed.before().keySet());
        return fields;
    }

    private static @Nullable String value(@Nullable String text) {
        return text == null ? null : Written.value(text);
    }

    private static List<Change> shortened(List<Change> changes) {
        List<Change> kept = new ArrayList<>(changes.subList(0, MOST));
        kept.add(new Change("…", null, changes.size() - MOST + " more"));
        return kept;
    }
}

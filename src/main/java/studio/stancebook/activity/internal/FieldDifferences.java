package studio.stancebook.activity.internal;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldChange;

/** What a event changed from what to what. */
final class FieldDifferences {

    private static final int LONGEST_FIELD = 100;

    /** More than a dimension set has values; so a line stays shorter than what the table takes. */
    static final int MOST = 300;

    private FieldDifferences() {}

    static List<FieldChange> of(ActivityEvent event) {
        List<FieldChange> changes = new ArrayList<>();
        for (String field : fields(event)) {
            String from = event.before().get(field);
            String to = event.after().get(field);
            if (!Objects.equals(from, to)) {
                changes.add(new FieldChange(RecordText.words(field, LONGEST_FIELD), value(from), value(to)));
            }
        }
        return changes.size() <= MOST ? changes : shortened(changes);
    }

    private static Set<String> fields(ActivityEvent event) {
        Map<String, String> longer = event.after().isEmpty() ? event.before() : event.after();
        Set<String> fields = new LinkedHashSet<>(longer.keySet());
        fields.addAll(event.before().keySet());
        return fields;
    }

    private static @Nullable String value(@Nullable String text) {
        return text == null ? null : RecordText.value(text);
    }

    private static List<FieldChange> shortened(List<FieldChange> changes) {
        List<FieldChange> kept = new ArrayList<>(changes.subList(0, MOST));
        kept.add(new FieldChange("…", null, changes.size() - MOST + " more"));
        return kept;
    }
}

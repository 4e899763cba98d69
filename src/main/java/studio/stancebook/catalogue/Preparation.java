package studio.stancebook.catalogue;

import java.util.function.Consumer;
import org.springframework.stereotype.Component;
import studio.stancebook.classes.layout.CurrentLayout;
import studio.stancebook.classes.layout.ValueLayout;

/** What can be computed of drafts before they are added, by whoever has time for it, so that adding them takes less. */
@Component
public class Preparation {

    private final CurrentLayout layouts;

    Preparation(CurrentLayout layouts) {
        this.layouts = layouts;
    }

    /** Computes every measure that the studio has now; needs no transaction. */
    public Consumer<PackageDraft> now() {
        ValueLayout layout = layouts.get();
        return draft -> draft.measures(layout);
    }
}

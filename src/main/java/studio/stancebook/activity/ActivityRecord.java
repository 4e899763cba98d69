package studio.stancebook.activity;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.stereotype.Component;
import studio.stancebook.activity.internal.Chain;
import studio.stancebook.activity.internal.StoredLines;

/** The activity record as it is read; who may read it is the caller's to check. */
@Component
public class ActivityRecord {

    private final StoredLines lines;
    private final Chain chain;

    ActivityRecord(StoredLines lines, Chain chain) {
        this.lines = lines;
        this.chain = chain;
    }

    /** A page of lines, the newest first, whatever order is asked for. */
    public Page<ActivityLine> list(ActivityFilter filter, Pageable page) {
        return lines.page(filter, page);
    }

    /** Reads the lines that there are now in their order, without holding more than some. */
    public void forEach(ActivityFilter filter, Consumer<ActivityLine> consumer) {
        lines.forEach(filter, lines.head().lineCount(), consumer);
    }

    /** The kinds of things that something was ever done to. */
    public List<String> kinds() {
        return lines.kinds();
    }

    /** Everybody who ever did something, by id, with the name they had last. */
    public Map<Long, String> people() {
        return lines.people();
    }

    /** Reads all lines that there are now and looks for the first that is not as it was written, or not in its place. */
    public ChainCheck verify() {
        return chain.verify();
    }
}

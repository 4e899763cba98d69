package studio.stancebook.classes;

import java.util.List;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import studio.stancebook.classes.layout.ScalarLayout;

/**
 * The recorded scalars of the classes of segments, by key of the dimension, kept in memory from the first write to a
 * segment on; for this module alone.
 */
@Component
public class ScalarClasses {

    private final ClassSnapshots classes;

    ScalarClasses(ClassReader reader, ClassRevisions revisions, PlatformTransactionManager transactions) {
        classes = new ClassSnapshots(reader, revisions, () -> ScalarLayout.INSTANCE, transactions);
    }

    /** As {@link ClassSnapshots#of(String)}. */
    public ClassSnapshot of(String segmentKey) {
        return classes.of(segmentKey);
    }

    /** As {@link ClassSnapshots#expectAdditions}. */
    public void expectAdditions(String segmentKey) {
        classes.expectAdditions(segmentKey);
    }

    /** As {@link ClassSnapshots#added}. */
    public void added(long segmentId, List<ClassRow> rows) {
        classes.added(segmentId, ScalarLayout.INSTANCE.fingerprint(), rows);
    }
}

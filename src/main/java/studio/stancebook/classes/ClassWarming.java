package studio.stancebook.classes;

import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.task.TaskExecutor;
import org.springframework.stereotype.Component;

/** Reads and sorts the classes of all segments once the server has started, so that the first who open them need not wait. */
@Component
class ClassWarming {

    private final ClassSnapshots snapshots;
    private final TaskExecutor behind;

    ClassWarming(ClassSnapshots snapshots, @Qualifier("applicationTaskExecutor") TaskExecutor behind) {
        this.snapshots = snapshots;
        this.behind = behind;
    }

    @EventListener
    void atStart(ApplicationReadyEvent event) {
        behind.execute(this::warm);
    }

    private void warm() {
        snapshots.all().values().forEach(snapshot -> snapshot.measures().forEach(snapshot::column));
    }
}

package studio.stancebook.catalogue.internal;

import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.task.TaskExecutor;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.event.TransactionalEventListener;
import org.springframework.transaction.support.TransactionSynchronization;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.springframework.transaction.support.TransactionTemplate;
import studio.stancebook.classes.layout.CurrentLayout;
import studio.stancebook.classes.layout.ValueLayout;
import studio.stancebook.measure.MeasuresChangedElsewhere;
import studio.stancebook.measure.StudioMeasuresChanged;

/**
 * Computes the measures of all packages anew when the list of measures is not the one they were computed with: after an
 * update of the program, when the studio adds or removes a ratio, and when a transaction that began before that commits
 * after it. Until then classes are right all the same, because whoever reads them computes what is out of date.
 */
@Component
public class Remeasure {

    private static final Logger LOG = LoggerFactory.getLogger(Remeasure.class);

    /** So many packages whoever adds a ratio waits for; the rest is done behind. */
    static final int AT_ONCE_AT_MOST = 2000;

    private static final int SLICE = 200;

    /** Two programs with different measures over one database would measure against each other without end. */
    private static final int MOST_PASSES = 20;

    private final StoredPackages packages;
    private final CurrentLayout layouts;
    private final TransactionTemplate transaction;
    private final TaskExecutor behind;
    private final AtomicBoolean waiting = new AtomicBoolean();

    Remeasure(
            StoredPackages packages,
            CurrentLayout layouts,
            PlatformTransactionManager transactions,
            @Qualifier("applicationTaskExecutor") TaskExecutor behind) {
        this.packages = packages;
        this.layouts = layouts;
        this.transaction = new TransactionTemplate(transactions);
        this.transaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
        this.behind = behind;
    }

    @EventListener
    void atStart(ApplicationReadyEvent event) {
        runBehind();
    }

    @EventListener
    void whenAnotherServerChangedThem(MeasuresChangedElsewhere event) {
        runBehind();
    }

    @TransactionalEventListener
    void whenMeasuresChange(StudioMeasuresChanged event) {
        if (upTo(AT_ONCE_AT_MOST) > 0) {
            runBehind();
        }
    }

    /**
     * Says that the transaction under way writes measures of a layout. If that is not the present one any more when the
     * transaction commits, nobody else has seen what it wrote, so it is measured anew then.
     */
    void written(ValueLayout layout) {
        TransactionSynchronizationManager.registerSynchronization(new TransactionSynchronization() {
            @Override
            public void afterCompletion(int status) {
                if (status == STATUS_COMMITTED) {
                    behind.execute(() -> compare(layout));
                }
            }
        });
    }

    private void compare(ValueLayout written) {
        if (!layouts.get().fingerprint().equals(written.fingerprint())) {
            runBehind();
        }
    }

    private void runBehind() {
        if (waiting.compareAndSet(false, true)) {
            behind.execute(() -> {
                waiting.set(false);
                outdated();
            });
        }
    }

    /** Measures every package that was measured with another list of measures, until none is left. */
    public void outdated() {
        int passes = 0;
        while (passes < MOST_PASSES && pass()) {
            passes++;
        }
        if (passes == MOST_PASSES) {
            LOG.warn("Some packages are measured with another list of measures again and again:"
                    + " does another version of this program use the same database?");
        }
    }

    /** Goes through all packages once; false when there was nothing to do. */
    private boolean pass() {
        long last = slice(0);
        if (last == 0) {
            return false;
        }
        LOG.info("Measuring packages anew, because the list of measures is another one");
        while (last > 0) {
            last = slice(last);
        }
        return true;
    }

    /** Measures so many packages, and gives the id of the last one if there may be more, else 0. */
    private long upTo(int most) {
        long last = 0;
        for (int done = 0; done < most; done += SLICE) {
            long next = slice(last);
            if (next == 0) {
                return 0;
            }
            last = next;
        }
        return last;
    }

    /**
     * Measures the next packages that are out of date, and gives the id of the last one; 0 if there are none. One at a time,
     * or two would wait for each other's rows.
     */
    private synchronized long slice(long after) {
        Long last = transaction.execute(status -> {
            ValueLayout layout = layouts.get();
            List<StoredPackage> outdated = packages.measuredOtherwise(layout.fingerprint(), after, SLICE);
            outdated.forEach(kept -> measure(kept, layout));
            return outdated.isEmpty() ? 0L : outdated.get(outdated.size() - 1).id();
        });
        return last == null ? 0 : last;
    }

    /** Writes the numbers alone, and only if nobody changed the package meanwhile: they are no change of the package. */
    private void measure(StoredPackage kept, ValueLayout layout) {
        StoredPackage.Numbers numbers = kept.numbers(layout);
        packages.remeasure(
                kept.id(),
                kept.version(),
                numbers.measures(),
                numbers.scalars(),
                numbers.classMeasures(),
                layout.fingerprint());
    }
}

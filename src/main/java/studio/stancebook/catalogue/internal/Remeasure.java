package studio.stancebook.catalogue.internal;

import java.util.List;
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
import org.springframework.transaction.support.TransactionTemplate;
import studio.stancebook.measure.StudioMeasuresChanged;

/**
 * Computes the measures of all packages anew when the list of measures is not the one they were computed with: after an
 * update of the program, and when the studio adds or removes a ratio. Until then classes are right all the same, because
 * whoever reads them computes what is out of date.
 */
@Component
public class Remeasure {

    private static final Logger LOG = LoggerFactory.getLogger(Remeasure.class);

    /** So many packages whoever adds a ratio waits for; the rest is done behind. */
    static final int AT_ONCE_AT_MOST = 2000;

    private static final int SLICE = 200;

    private final StoredPackages packages;
    private final CurrentLayout layouts;
    private final TransactionTemplate transaction;
    private final TaskExecutor behind;

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
        behind.execute(this::outdated);
    }

    /** Measures every package that was measured with another list of measures. */
    public void outdated() {
        all(0);
    }

    @TransactionalEventListener
    void whenMeasuresChange(StudioMeasuresChanged event) {
        long last = upTo(AT_ONCE_AT_MOST);
        if (last > 0) {
            behind.execute(() -> all(last));
        }
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

    private void all(long after) {
        long last = slice(after);
        if (last > 0) {
            LOG.info("Measuring packages anew, because the list of measures is another one");
        }
        while (last > 0) {
            last = slice(last);
        }
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

package studio.stancebook.operations;

import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import studio.stancebook.operations.store.StoreTrouble;
import studio.stancebook.problem.Refusal;

/** Turns a failure that came of the store into what may be told. */
@Component
public class StoreRefusals {

    private static final Logger LOG = LoggerFactory.getLogger(StoreRefusals.class);

    /** What to tell about a failure; empty if it did not come of the store. */
    public Optional<Refusal> of(Throwable failure) {
        return StoreTrouble.of(failure).map(trouble -> told(trouble, failure));
    }

    private OutOfService told(StoreTrouble trouble, Throwable failure) {
        LOG.error("The store cannot serve ({}): {}", trouble, failure.toString());
        return OutOfService.because(trouble);
    }
}

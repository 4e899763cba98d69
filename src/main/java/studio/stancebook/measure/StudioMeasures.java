package studio.stancebook.measure;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.event.TransactionalEventListener;
import studio.stancebook.access.Author;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldValues;
import studio.stancebook.measure.internal.StoredRatio;
import studio.stancebook.measure.internal.StoredRatios;
import studio.stancebook.problem.Conflict;

/** The measures of this studio: those of this program, then the studio's own ratios, oldest first. */
@Component
public class StudioMeasures {

    /** Another server over the same database may have added a ratio: it is seen after this time. */
    private static final long LOOK_AGAIN_AFTER_NANOS = Duration.ofSeconds(5).toNanos();

    private static final String KIND = "studio ratio";

    private final StoredRatios ratios;
    private final ApplicationEventPublisher events;
    private final Clock clock;
    private volatile @Nullable Held held;

    private record Held(MeasureRegistry registry, List<StudioRatio> ratios, long readAtNanos) {

        boolean fresh() {
            return System.nanoTime() - readAtNanos < LOOK_AGAIN_AFTER_NANOS;
        }
    }

    StudioMeasures(StoredRatios ratios, ApplicationEventPublisher events, Clock clock) {
        this.ratios = ratios;
        this.events = events;
        this.clock = clock;
    }

    /** The measures as they are now. */
    public MeasureRegistry current() {
        return held().registry();
    }

    /** The studio's own ratios, oldest first. */
    public List<StudioRatio> ratios() {
        return held().ratios();
    }

    private Held held() {
        Held known = held;
        return known != null && known.fresh() ? known : read(known);
    }

    private Held read(@Nullable Held known) {
        List<StudioRatio> now =
                ratios.findAllByOrderByIdAsc().stream().map(StoredRatio::ratio).toList();
        boolean same = known != null && known.ratios().equals(now);
        MeasureRegistry registry = known != null && same ? known.registry() : MeasureRegistry.with(now);
        Held next = new Held(registry, now, System.nanoTime());
        held = next;
        if (known != null && !same) {
            events.publishEvent(new MeasuresChangedElsewhere());
        }
        return next;
    }

    /**
     * Adds a ratio at the end.
     *
     * @throws Conflict if there is a measure of this key
     */
    @Transactional
    public StudioRatio add(StudioRatio ratio, Author by) {
        if (current().find(ratio.key()).isPresent()) {
            throw taken(ratio.key());
        }
        try {
            ratios.saveAndFlush(new StoredRatio(ratio, by, clock.instant()));
        } catch (DataIntegrityViolationException addedMeanwhile) {
            throw taken(ratio.key());
        }
        events.publishEvent(new StudioMeasuresChanged());
        events.publishEvent(
                ActivityEvent.of("added", KIND, ratio.key(), ratio.name(), FieldValues.none(), facts(ratio)));
        return ratio;
    }

    private static Conflict taken(String key) {
        return new Conflict("There is a measure with the key " + key + " already.");
    }

    /**
     * Removes a ratio.
     *
     * @throws UnknownMeasure if the studio added none of this key
     */
    @Transactional
    public void remove(String key) {
        StudioRatio removed = ratios.findAllByOrderByIdAsc().stream()
                .map(StoredRatio::ratio)
                .filter(ratio -> ratio.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new UnknownMeasure(key));
        if (ratios.deleteByRatioKey(key) == 0) {
            throw new UnknownMeasure(key);
        }
        events.publishEvent(new StudioMeasuresChanged());
        events.publishEvent(ActivityEvent.of("removed", KIND, key, removed.name(), facts(removed), FieldValues.none()));
    }

    private static FieldValues facts(StudioRatio ratio) {
        return FieldValues.of("name", ratio.name()).and("definition", ratio.definition());
    }

    /** First of all listeners, so that the others find the new list. */
    @Order(Ordered.HIGHEST_PRECEDENCE)
    @TransactionalEventListener
    void forget(StudioMeasuresChanged event) {
        held = null;
    }
}

package studio.stancebook.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import studio.stancebook.problem.TooMany;

/** Places for work that takes a processor for long. */
class BulkheadTest {

    private final Bulkhead bulkhead = new Bulkhead();

    @Test
    void givesOnePersonTwoPlacesAndTakesThemBack() {
        Bulkhead.Place first = bulkhead.take(1);
        Bulkhead.Place second = bulkhead.take(1);

        assertThatThrownBy(() -> bulkhead.take(1)).isInstanceOf(TooMany.class);
        first.close();
        bulkhead.take(1).close();
        second.close();
    }

    @Test
    void asksWhoeverGetsNoPlaceInTimeToComeAgain() {
        List<Bulkhead.Place> held = List.of(bulkhead.take(1), bulkhead.take(1), bulkhead.take(2), bulkhead.take(2));

        assertThatThrownBy(() -> bulkhead.take(3))
                .isInstanceOfSatisfying(
                        TooMany.class,
                        refused -> assertThat(refused.retryAfter()).contains("30"));
        held.forEach(Bulkhead.Place::close);
        bulkhead.take(3).close();
    }

    @Test
    void letsNoMoreWorkAtOnceThanThereArePlaces() throws Exception {
        AtomicInteger working = new AtomicInteger();
        AtomicInteger most = new AtomicInteger();
        List<Callable<Boolean>> people = new ArrayList<>();
        for (long person = 0; person < 100; person++) {
            long id = person;
            people.add(() -> {
                try (Bulkhead.Place held = bulkhead.take(id)) {
                    most.accumulateAndGet(working.incrementAndGet(), Math::max);
                    Thread.yield();
                    working.decrementAndGet();
                    return true;
                } catch (TooMany refused) {
                    return false;
                }
            });
        }
        ExecutorService crowd = Executors.newFixedThreadPool(50);
        int served = 0;
        for (Future<Boolean> one : crowd.invokeAll(people)) {
            served += one.get() ? 1 : 0;
        }
        crowd.shutdown();

        assertThat(most.get()).isBetween(1, Bulkhead.PLACES);
        assertThat(served).isGreaterThanOrEqualTo(Bulkhead.PLACES);
    }
}

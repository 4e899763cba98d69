package studio.stancebook.exchange.importing;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import studio.stancebook.problem.TooMany;

/** Lets one import run at a time; the others wait in line for a while. */
final class ImportTurn {

    private static final int PATIENCE_SECONDS = 60;

    private final Semaphore turn = new Semaphore(1, true);

    /** @throws TooMany if the turn does not come in time */
    <T> T take(Supplier<T> work) {
        boolean mine = false;
        try {
            mine = turn.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS);
            if (!mine) {
                throw new TooMany("Another import is running; try again when it is done.");
            }
            return work.get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new TooMany("The server is stopping; try again later.");
        } finally {
            if (mine) {
                turn.release();
            }
        }
    }
}

package studio.stancebook.exchange.importing;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Makes the next of a row of things in a thread of its own while the last one is used. */
final class ReadAhead<T> implements AutoCloseable {

    private static final long LONGEST_SECONDS = 60;

    private final Supplier<@Nullable T> source;
    private final ExecutorService reader = Executors.newSingleThreadExecutor(work -> new Thread(work, "import-reader"));
    private CompletableFuture<@Nullable T> next;

    /** @param source gives null after the last; called by one thread at a time */
    ReadAhead(Supplier<@Nullable T> source) {
        this.source = source;
        this.next = CompletableFuture.supplyAsync(source, reader);
    }

    /**
     * The next; null after the last. What the source throws comes out here.
     *
     * @param whileWaiting done every second until it is made
     */
    @Nullable
    T next(Runnable whileWaiting) {
        try {
            T made = await(whileWaiting);
            if (made != null) {
                next = CompletableFuture.supplyAsync(source, reader);
            }
            return made;
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof RuntimeException own) {
                throw own;
            }
            if (failed.getCause() instanceof Error fatal) {
                throw fatal;
            }
            throw failed;
        }
    }

    private @Nullable T await(Runnable whileWaiting) {
        while (!next.isDone()) {
            try {
                next.get(1, TimeUnit.SECONDS);
            } catch (TimeoutException notYet) {
                whileWaiting.run();
            } catch (ExecutionException failed) {
                break;
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                break;
            }
        }
        return next.join();
    }

    /** Comes back when nothing is being made any more. */
    @Override
    public void close() {
        reader.shutdownNow();
        try {
            if (!reader.awaitTermination(LONGEST_SECONDS, TimeUnit.SECONDS)) {
                throw new IllegalStateException("Rows of an import are still being read");
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }
}

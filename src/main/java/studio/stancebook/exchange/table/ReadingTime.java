package studio.stancebook.exchange.table;

import java.time.Duration;

/**
 * The time that is spent on reading one file, so that no file holds a processor for ever. The time in which rows are written
 * does not count.
 */
public final class ReadingTime {

    private static final Duration MOST = Duration.ofMinutes(5);

    private final long mostNanos;
    private long spent;
    private long since = System.nanoTime();

    public ReadingTime() {
        this(MOST);
    }

    ReadingTime(Duration most) {
        this.mostNanos = most.toNanos();
    }

    /** The reading goes on. */
    public void resume() {
        since = System.nanoTime();
    }

    /** The reading waits until more is wanted. */
    public void pause() {
        spent += System.nanoTime() - since;
    }

    /**
     * Called while the file is read.
     *
     * @throws TableTooLarge if it takes too long, or if the thread was asked to stop
     */
    public void check() {
        if (Thread.currentThread().isInterrupted()) {
            throw new TableTooLarge("The reading of the file was stopped.");
        }
        if (spent + System.nanoTime() - since > mostNanos) {
            throw new TableTooLarge("Reading the file takes longer than "
                    + Duration.ofNanos(mostNanos).toSeconds() + " seconds; bring it in in parts.");
        }
    }
}

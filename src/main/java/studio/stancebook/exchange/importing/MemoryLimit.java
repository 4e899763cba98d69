package studio.stancebook.exchange.importing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.function.Consumer;
import studio.stancebook.exchange.mapping.NamedSegment;
import studio.stancebook.problem.TooLarge;

/**
 * How many packages the heap of this server can carry, because the classes of all segments are kept in memory. Measured, see
 * docs/performance.md: some 600 bytes a package for measures and 250 for scalars once a class was written to.
 */
final class MemoryLimit {

    /** What the server takes for itself, an import under way included. */
    static final long FOR_THE_SERVER = 128L << 20;

    static final long FOR_A_PACKAGE = 900;

    private final long heap;

    /** @param heap the most that the heap may become, in bytes */
    MemoryLimit(long heap) {
        this.heap = heap;
    }

    /** Packages in the whole studio. */
    long packages() {
        return Math.max(0, heap - FOR_THE_SERVER) / FOR_A_PACKAGE;
    }

    /**
     * Refuses a file with more packages than there is room for, before any is written; of a file that changes packages that
     * are there, it is known later how many are new.
     *
     * @param there how many packages there are
     * @param segments takes the segment of each package
     * @throws TooLarge telling what would do
     */
    void check(PackageFile file, ImportOptions options, long there, Consumer<NamedSegment> segments) {
        long room = Math.max(0, packages() - (options.update() ? 0 : there));
        try (PackageRows rows = file.open(options)) {
            long found = 0;
            for (NamedSegment segment = rows.segment(); segment != null; segment = rows.segment()) {
                if (++found > room) {
                    throw tooMany(room, there);
                }
                segments.accept(segment);
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /**
     * Refuses what turned out to be more new packages than there is room for.
     *
     * @throws TooLarge telling what would do
     */
    void requireRoom(long there, long added) {
        long room = Math.max(0, packages() - there);
        if (added > room) {
            throw tooMany(room, there);
        }
    }

    private TooLarge tooMany(long room, long there) {
        return new TooLarge("The file has more than " + room + " packages. With a heap of " + (heap >> 20)
                + " MB this server keeps up to " + packages() + ", and has " + there
                + ". Bring in fewer, or have whoever runs the server give it more memory.");
    }
}

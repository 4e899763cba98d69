package studio.stancebook.operations.room;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import org.h2.store.fs.FileBaseDefault;
import org.h2.store.fs.FilePathWrapper;

/**
 * A disk with a capacity, as a file system of H2: {@code jdbc:h2:file:narrow:PATH}. Files cannot grow beyond the capacity
 * and fail as those of a full disk do.
 */
public final class NarrowDisk extends FilePathWrapper {

    private static final long UNLIMITED = Long.MAX_VALUE / 4;

    private static volatile long capacity = UNLIMITED;
    private static volatile Path database = Path.of("none");

    static void holds(Path file) {
        database = file;
        capacity = UNLIMITED;
    }

    /** Leaves so many bytes free. */
    static void leave(long bytes) {
        capacity = used() + bytes;
    }

    static void makeRoom() {
        capacity = UNLIMITED;
    }

    static long free() {
        return Math.max(0, capacity - used());
    }

    private static long used() {
        try {
            return Files.exists(database) ? Files.size(database) : 0;
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Override
    public String getScheme() {
        return "narrow";
    }

    @Override
    public FileChannel open(String mode) throws IOException {
        return new Channel(super.open(mode));
    }

    /** Passes everything on but what would need more room than there is. */
    private static final class Channel extends FileBaseDefault {

        private final FileChannel file;

        Channel(FileChannel file) {
            this.file = file;
        }

        @Override
        public long size() throws IOException {
            return file.size();
        }

        @Override
        public int read(ByteBuffer target, long position) throws IOException {
            return file.read(target, position);
        }

        @Override
        public int write(ByteBuffer source, long position) throws IOException {
            long growth = position + source.remaining() - file.size();
            if (growth > free()) {
                throw new IOException("No space left on device");
            }
            return file.write(source, position);
        }

        @Override
        protected void implTruncate(long size) throws IOException {
            file.truncate(size);
        }

        @Override
        public void force(boolean metaData) throws IOException {
            file.force(metaData);
        }

        @Override
        public FileLock tryLock(long position, long size, boolean shared) throws IOException {
            return file.tryLock(position, size, shared);
        }

        @Override
        protected void implCloseChannel() throws IOException {
            file.close();
        }
    }
}

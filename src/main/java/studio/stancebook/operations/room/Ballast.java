package studio.stancebook.operations.room;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.util.unit.DataSize;

/**
 * A file that keeps room for the worst case. A database whose file could not grow is closed, and to be opened again, even for
 * reading, it has to write a little: dropping the ballast gives it that.
 */
public final class Ballast {

    private static final Logger LOG = LoggerFactory.getLogger(Ballast.class);
    private static final String NAME = "ballast.bin";
    private static final int BLOCK = 64 * 1024;

    private final Optional<Path> file;
    private final DataSize size;
    private final Room room;
    private final AtomicBoolean missing = new AtomicBoolean();

    Ballast(Optional<Path> file, DataSize size, Room room) {
        this.file = size.toBytes() == 0 ? Optional.empty() : file;
        this.size = size;
        this.room = room;
    }

    /** Where the ballast of a data folder lies. */
    public static Path in(Path folder) {
        return folder.resolve(NAME);
    }

    /** Makes the file if it is not there and there is room for it. */
    @EventListener(ApplicationReadyEvent.class)
    void take() {
        file.filter(path -> !Files.exists(path)).ifPresent(this::takeIfRoom);
    }

    private void takeIfRoom(Path path) {
        missing.set(true);
        if (room.has(size.toBytes())) {
            try {
                write(path);
                missing.set(false);
            } catch (IOException e) {
                LOG.warn("No ballast of {} could be laid: {}", size, e.toString());
            }
        }
    }

    /** Under another name first, so that half a file is never taken for a whole one. */
    private void write(Path path) throws IOException {
        Path unfinished = path.resolveSibling(NAME + ".part");
        try {
            fill(unfinished);
            Files.move(unfinished, path, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }

    /** With bytes that no file system can store in less. */
    private void fill(Path path) throws IOException {
        byte[] block = new byte[BLOCK];
        Random random = new Random();
        try (OutputStream out = Files.newOutputStream(path)) {
            for (long left = size.toBytes(); left > 0; left -= BLOCK) {
                random.nextBytes(block);
                out.write(block, 0, (int) Math.min(BLOCK, left));
            }
        }
    }

    /** Takes it again after it was dropped, once there is room. */
    void takeAgain() {
        if (missing.compareAndSet(true, false)) {
            take();
        }
    }

    /** Gives its room to whoever needs it now. */
    public void drop() {
        file.ifPresent(path -> {
            if (deleted(path)) {
                missing.set(true);
                LOG.error("The disk is full: {} was deleted to make room for {}.", path, size);
            }
        });
    }

    /** Deletes a ballast and says whether there was one. */
    public static boolean deleted(Path path) {
        try {
            return Files.deleteIfExists(path);
        } catch (IOException e) {
            LOG.warn("{} could not be deleted: {}", path, e.toString());
            return false;
        }
    }
}

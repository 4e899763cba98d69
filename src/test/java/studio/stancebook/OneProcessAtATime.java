package studio.stancebook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.function.Supplier;

/** For what the processes that run tests side by side make once and then share. */
public final class OneProcessAtATime {

    private OneProcessAtATime() {}

    /** Makes or finds a thing while every other process that wants the same one waits. */
    public static <T> T make(String name, Supplier<T> thing) {
        Path file = Path.of("target", name + ".lock");
        try {
            Files.createDirectories(file.getParent());
            try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
                channel.lock(); // until the channel is closed
                return thing.get();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

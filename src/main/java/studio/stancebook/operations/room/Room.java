package studio.stancebook.operations.room;

import java.nio.file.Path;
import java.util.Optional;

/** Whether there is room to record anything. */
final class Room {

    private final Optional<Path> folder;
    private final FreeBytes freeBytes;
    private final RoomSettings settings;

    Room(Optional<Path> folder, FreeBytes freeBytes, RoomSettings settings) {
        this.folder = folder;
        this.freeBytes = freeBytes;
        this.settings = settings;
    }

    /** Less is free than must stay so. */
    boolean isShort() {
        return !has(0);
    }

    /** This many bytes can be written without touching the reserve. */
    boolean has(long bytes) {
        return folder.isEmpty()
                || freeBytes.on(folder.get()) >= settings.reserve().toBytes() + bytes;
    }
}

package studio.stancebook.operations.room;

import java.nio.file.Path;

/** How much room there is. */
interface FreeBytes {

    /** The bytes that this process may still write to the disk of a folder; 0 if the folder cannot be reached. */
    long on(Path folder);
}

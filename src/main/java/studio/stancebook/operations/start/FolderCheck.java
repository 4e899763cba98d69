package studio.stancebook.operations.start;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.springframework.core.env.ConfigurableEnvironment;
import studio.stancebook.operations.store.StoreTrouble;
import studio.stancebook.problem.CannotStart;

/** The folder of a database in a file: it is made if it is not there, and must take new files. */
public final class FolderCheck implements StartCheck {

    @Override
    public void check(ConfigurableEnvironment environment) {
        DatabaseUrl.file(DatabaseSettings.of(environment).url()).ifPresent(FolderCheck::check);
    }

    private static void check(Path database) {
        Path folder = Objects.requireNonNull(database.getParent());
        make(folder);
        write(folder);
        if (Files.exists(database) && !Files.isWritable(database)) {
            throw new CannotStart(
                    "The database " + database + " cannot be written by " + user() + ".",
                    "Give this user the right to write it, or run the server as the user who owns it.");
        }
    }

    private static void make(Path folder) {
        try {
            if (!Files.exists(folder)) {
                Files.createDirectories(folder);
                PrivateFile.make(folder);
            } else if (!Files.isDirectory(folder)) {
                throw new FileAlreadyExistsException(folder.toString());
            }
        } catch (FileAlreadyExistsException file) {
            throw new CannotStart(
                    "The data folder " + folder + " is not a folder, or something above it is a file.",
                    "Set STANCEBOOK_DATA to a folder.");
        } catch (IOException e) {
            throw cannotWrite(folder, e);
        }
    }

    private static void write(Path folder) {
        try {
            Path file = Files.createTempFile(folder, "start", ".check");
            Files.writeString(file, "This file shows that the folder can be written to; it may be deleted.\n");
            Files.delete(file);
        } catch (IOException e) {
            throw cannotWrite(folder, e);
        }
    }

    private static CannotStart cannotWrite(Path folder, IOException cause) {
        CannotStart refusal = StoreTrouble.of(cause).orElse(StoreTrouble.NOT_WRITABLE) == StoreTrouble.NO_ROOM
                ? StartWords.noRoom(folder)
                : new CannotStart(
                        "The data folder " + folder + " cannot be written by " + user() + ".",
                        "Give this user the right to write there, or set STANCEBOOK_DATA to a folder that it may write.");
        refusal.initCause(cause);
        return refusal;
    }

    private static String user() {
        return "the user " + System.getProperty("user.name");
    }
}

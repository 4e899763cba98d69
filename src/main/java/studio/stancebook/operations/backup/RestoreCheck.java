package studio.stancebook.operations.backup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.core.env.ConfigurableEnvironment;
import studio.stancebook.operations.start.StartCheck;
import studio.stancebook.problem.CannotStart;

/** A backup that is to be restored is sound, before anything is touched. */
public final class RestoreCheck implements StartCheck {

    @Override
    public void check(ConfigurableEnvironment environment) {
        String file = environment.getProperty(RestoreAtStart.SETTING, "");
        if (!file.isBlank()) {
            soundBackup(Path.of(file));
        }
    }

    /** @throws CannotStart if the file is not there, cannot be read or is not what was written */
    static BackupFile soundBackup(Path file) {
        Path path = file.toAbsolutePath().normalize();
        if (!Files.isReadable(path) || Files.isDirectory(path)) {
            throw new CannotStart(
                    "There is no backup " + path + " that the user " + System.getProperty("user.name") + " can read.",
                    "Correct --" + RestoreAtStart.SETTING + ".");
        }
        try {
            return BackupFile.check(path);
        } catch (DamagedBackup damaged) {
            throw new CannotStart(
                    "The backup " + path + " cannot be used: " + damaged.getMessage() + ".",
                    "Nothing was changed. Take another copy of it, or an older backup.");
        } catch (IOException e) {
            throw new CannotStart(
                    "The backup " + path + " cannot be read: " + e.getMessage() + ".", "Take another copy of it.");
        }
    }
}

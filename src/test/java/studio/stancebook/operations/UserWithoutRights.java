package studio.stancebook.operations;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;

/**
 * Who runs the server of the image here: nobody, where the superuser runs the tests and can step down; else whoever runs
 * the tests.
 *
 * @param prefix the words before a command that make it theirs
 * @param report who it is and why, for people
 */
record UserWithoutRights(List<String> prefix, String report) {

    private static final List<String> STEP_DOWN =
            List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups", "--no-new-privs");

    static UserWithoutRights find(JavaOfTheImage java) {
        String name = System.getProperty("user.name");
        if (!name.equals("root")) {
            return new UserWithoutRights(List.of(), name + ", who runs the tests");
        }
        List<String> trial = new java.util.ArrayList<>(STEP_DOWN);
        trial.addAll(List.of(java.home() + "/bin/java", "-version"));
        try {
            Ended ended = StudioProcess.start(trial, Path.of("/"), Map.of()).waitForEnd(Duration.ofMinutes(1));
            return ended.exitCode() == 0
                    ? new UserWithoutRights(STEP_DOWN, "nobody")
                    : superuser("nobody may not run " + java.home());
        } catch (UncheckedIOException noSetpriv) {
            return superuser("there is no setpriv here");
        }
    }

    private static UserWithoutRights superuser(String why) {
        return new UserWithoutRights(
                List.of(), "root, because " + why + ": that a user without rights can was NOT seen");
    }

    /** Gives a folder to them. */
    void own(Path folder) {
        if (prefix.isEmpty()) {
            return;
        }
        try {
            Files.setAttribute(folder, "unix:uid", 65534);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package studio.stancebook.operations;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import studio.stancebook.operations.Dockerfile.Instruction;

/**
 * What the Dockerfile says, done in a folder of this machine in place of the root of an image: its RUN and COPY instructions
 * at once, its ENTRYPOINT and HEALTHCHECK when asked. Left out are only Maven, which made the jar already, and the user,
 * for whom {@link UserWithoutRights} stands in.
 */
final class ImageOnHost {

    private static final Path PROJECT = Path.of("").toAbsolutePath();
    private static final Duration LONGEST_STEP = Duration.ofMinutes(5);

    private final Path root;
    private final UserWithoutRights user;
    private final Map<String, String> environment = new HashMap<>();
    private Path workFolder = PROJECT;
    private List<String> entrypoint = List.of();
    private List<String> healthcheck = List.of();

    private ImageOnHost(Path root, JavaOfTheImage java, UserWithoutRights user) {
        this.root = root;
        this.user = user;
        environment.put("JAVA_HOME", java.home().toString());
    }

    static ImageOnHost build(Path root, JavaOfTheImage java, UserWithoutRights user) {
        ImageOnHost image = new ImageOnHost(root, java, user);
        Dockerfile.read(PROJECT.resolve("Dockerfile")).instructions().forEach(image::follow);
        return image;
    }

    private void follow(Instruction instruction) {
        String text = instruction.text();
        switch (instruction.keyword()) {
            case "ARG", "FROM", "EXPOSE" -> {}
            case "STOPSIGNAL" -> assertThat(text).isEqualTo("SIGTERM");
            case "WORKDIR" -> workFolder = instruction.stage() == 0 ? PROJECT : made(here(text));
            case "COPY" -> copy(instruction);
            case "RUN" -> run(text);
            case "USER" -> assertThat(text).matches("[1-9]\\d*");
            case "ENV" -> setEnvironment(text);
            case "VOLUME" -> user.own(made(here(text)));
            case "HEALTHCHECK" -> healthcheck = onHost(instruction.execForm());
            case "ENTRYPOINT" -> entrypoint = onHost(instruction.execForm());
            default -> throw new IllegalStateException("It is not known how to do this here: " + instruction);
        }
    }

    /** The first stage has the project before it already. */
    private void copy(Instruction instruction) {
        if (instruction.stage() == 0) {
            return;
        }
        String[] words = instruction.text().replaceFirst("^--from=build ", "").split(" ");
        assertThat(words).as(instruction.text()).hasSize(2).endsWith("./");
        Path from = words[0].startsWith("/") ? here(words[0]) : PROJECT.resolve(words[0]);
        expectSuccess(List.of("cp", "--archive", from + "/.", workFolder.toString()));
    }

    private void run(String command) {
        if (!command.startsWith("mvn ") && !command.startsWith("useradd ")) {
            expectSuccess(List.of("sh", "-c", onHost(command)));
        }
    }

    private void setEnvironment(String text) {
        for (String assignment : text.split(" ")) {
            String[] parts = assignment.split("=", 2);
            environment.put(parts[0], onHost(parts[1]));
        }
    }

    private void expectSuccess(List<String> command) {
        Ended ended = StudioProcess.start(command, workFolder, environment).waitForEnd(LONGEST_STEP);
        assertThat(ended.exitCode()).as(command + "\n" + ended.console()).isZero();
    }

    /** A path within the image, on this machine. */
    Path here(String path) {
        return root.resolve(path.replaceFirst("^/", "").replaceFirst("/$", ""));
    }

    private String onHost(String text) {
        return text.replaceAll("(?<![\\w./])/(layers|app|data)(?=/|$| )", root + "/$1");
    }

    private List<String> onHost(List<String> words) {
        return words.stream().map(this::onHost).toList();
    }

    private static Path made(Path folder) {
        try {
            Files.createDirectories(folder);
            return Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What {@code docker run -e ...} starts. */
    StudioProcess start(Map<String, String> settings) {
        return asUser(entrypoint, settings);
    }

    /** What the engine asks every so often. */
    boolean isHealthy(Map<String, String> settings) {
        return asUser(healthcheck, settings).waitForEnd(LONGEST_STEP).exitCode() == 0;
    }

    private StudioProcess asUser(List<String> command, Map<String, String> settings) {
        List<String> words = new ArrayList<>(user.prefix());
        words.addAll(command);
        Map<String, String> all = new HashMap<>(environment);
        all.putAll(settings);
        return StudioProcess.start(words, workFolder, all);
    }
}

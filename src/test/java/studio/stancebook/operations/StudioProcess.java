package studio.stancebook.operations;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/** A process whose console is kept. No setting of whoever runs the tests reaches it. */
final class StudioProcess {

    private static final Duration BETWEEN_LOOKS = Duration.ofMillis(20);

    private final Process process;
    private final StringBuffer console = new StringBuffer();
    private final Thread reader = new Thread(this::read);

    private StudioProcess(Process process) {
        this.process = process;
        reader.start();
    }

    static StudioProcess start(List<String> command, Path folder, Map<String, String> environment) {
        try {
            ProcessBuilder builder =
                    new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true);
            builder.environment().keySet().removeIf(StudioProcess::isSetting);
            builder.environment().putAll(environment);
            return new StudioProcess(builder.start());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isSetting(String variable) {
        return variable.matches("(STANCEBOOK|SPRING|SERVER|LOGGING|MANAGEMENT)_.*|JAVA_TOOL_OPTIONS|JDK_JAVA_OPTIONS");
    }

    long id() {
        return process.pid();
    }

    boolean runs() {
        return process.isAlive();
    }

    String console() {
        return console.toString();
    }

    private void read() {
        try (Reader lines = process.inputReader(StandardCharsets.UTF_8)) {
            char[] some = new char[8192];
            for (int n = lines.read(some); n >= 0; n = lines.read(some)) {
                console.append(some, 0, n);
            }
        } catch (IOException ended) {
            console.append("(the console was cut off)");
        }
    }

    /** SIGKILL: the process gets no chance to do anything more. */
    Ended kill() {
        process.destroyForcibly();
        return waitForEnd(Duration.ofMinutes(1));
    }

    /** SIGTERM, without waiting; what the process still has to say is heard. */
    void askToEnd() {
        process.toHandle().destroy();
    }

    Ended waitForEnd(Duration longest) {
        try {
            if (!process.waitFor(longest.toMillis(), TimeUnit.MILLISECONDS)) {
                process.destroyForcibly();
                throw new AssertionError("The process did not end within " + longest + ":\n" + console());
            }
            reader.join();
            return new Ended(process.exitValue(), console());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** Looks again and again until something is so; fails when the process ends before, or the time is up. */
    void waitUntil(String what, Duration longest, Supplier<Boolean> isSo) {
        long deadline = System.nanoTime() + longest.toNanos();
        while (!isSo.get()) {
            if (System.nanoTime() > deadline) {
                throw new AssertionError("Not within " + longest + ": " + what + "\n" + console());
            }
            if (endsWithin(BETWEEN_LOOKS)) {
                throw new AssertionError("The process ended before: " + what + "\n" + console());
            }
        }
    }

    private boolean endsWithin(Duration time) {
        try {
            return process.waitFor(time.toMillis(), TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}

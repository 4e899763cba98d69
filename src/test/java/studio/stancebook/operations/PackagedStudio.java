package studio.stancebook.operations;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The packaged server in a process of its own, over a database in a folder, on a free port. */
public final class PackagedStudio implements AutoCloseable {

    static final String LEAD = "lead@studio.example";
    static final String PASSWORD = "a password for tests";

    private static final Duration LONGEST_START = Duration.ofMinutes(4);
    private static final Duration LONGEST_END = Duration.ofMinutes(1);
    private static final Pattern PORT = Pattern.compile("Tomcat started on port (\\d+)");
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final StudioProcess process;
    private final URI address;

    private PackagedStudio(StudioProcess process) {
        this.process = process;
        this.address = URI.create("http://127.0.0.1:" + port(process));
        process.waitUntil("the server takes requests", LONGEST_START, this::takesRequests);
    }

    /** How to start a server: by default over a database in the folder, with the first lead given. */
    public static final class Start {

        private final Map<String, String> environment = new HashMap<>();
        private final List<String> before = new ArrayList<>();
        private final List<String> arguments = new ArrayList<>();

        private Start(Path folder) {
            environment.putAll(Installation.get().environment());
            with("STANCEBOOK_PORT", "0");
            with("STANCEBOOK_DATA", folder.toString());
            with("STANCEBOOK_ADMIN_EMAIL", LEAD);
            with("STANCEBOOK_ADMIN_PASSWORD", PASSWORD);
            // The lowest cost there is: what a password costs is not what is tested here.
            with("STANCEBOOK_LIMITS_REQUESTS_PER_SECOND", "100000");
            with("STANCEBOOK_PASSWORDS_BCRYPT_STRENGTH", "4");
        }

        Start with(String variable, String value) {
            environment.put(variable, value);
            return this;
        }

        Start argument(String argument) {
            arguments.add(argument);
            return this;
        }

        /** A command that in turn runs the server, such as one that takes rights or room from it. */
        Start under(String... command) {
            before.addAll(List.of(command));
            return this;
        }

        /** Starts and waits until the server takes requests. */
        public PackagedStudio andWait() {
            return new PackagedStudio(process());
        }

        /** Starts a server that is expected to end by itself. */
        Ended toTheEnd() {
            return process().waitForEnd(LONGEST_START);
        }

        private StudioProcess process() {
            Installation installation = Installation.get();
            List<String> command = new ArrayList<>(before);
            command.add(installation.command());
            command.addAll(arguments);
            return StudioProcess.start(command, installation.folder(), environment);
        }
    }

    public static Start in(Path folder) {
        return new Start(folder);
    }

    private static int port(StudioProcess process) {
        process.waitUntil(
                "the server listens", LONGEST_START, () -> listensAt(process).find());
        Matcher found = listensAt(process);
        return found.find() ? Integer.parseInt(found.group(1)) : 0;
    }

    private static Matcher listensAt(StudioProcess process) {
        return PORT.matcher(process.console());
    }

    private boolean takesRequests() {
        HttpRequest request = HttpRequest.newBuilder(address.resolve("/actuator/health/readiness"))
                .build();
        try {
            return CLIENT.send(request, HttpResponse.BodyHandlers.discarding()).statusCode() == 200;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    public URI address() {
        return address;
    }

    long processId() {
        return process.id();
    }

    StudioProcess process() {
        return process;
    }

    String console() {
        return process.console();
    }

    /** SIGKILL. */
    void kill() {
        process.kill();
    }

    /** SIGTERM, as {@code docker stop} and service managers send it. */
    public void stop() {
        process.askToEnd();
        process.waitForEnd(LONGEST_END);
    }

    @Override
    public void close() {
        if (process.runs()) {
            process.kill();
        }
    }
}

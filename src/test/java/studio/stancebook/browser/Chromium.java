package studio.stancebook.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import studio.stancebook.OneProcessAtATime;

/**
 * A Chromium for the browser tests, found or installed: the one of this machine, else Debian's when we may install it, else
 * the one that the browser library downloads, else a sentence that says what to do. As an extension of a test class it starts
 * before the first test and ends after the last.
 */
final class Chromium implements BeforeAllCallback, AfterAllCallback {

    /** The one without a window first: it draws the same and takes a fifth less time. */
    private static final List<String> PLACES = List.of(
            "/usr/bin/chromium-headless-shell",
            "/usr/bin/chromium",
            "/usr/bin/chromium-browser",
            "/usr/bin/google-chrome",
            "/snap/bin/chromium");

    private static final List<String> QUIET_FLAGS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync",
            "--font-render-hinting=none",
            "--force-color-profile=srgb");

    private @Nullable Playwright playwright;
    private @Nullable Browser browser;

    @Override
    public void beforeAll(ExtensionContext context) {
        Optional<Path> installed =
                OneProcessAtATime.make("chromium", () -> installed().or(Chromium::installFromDebian));
        playwright = Playwright.create(new Playwright.CreateOptions()
                .setEnv(installed.isPresent() ? Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1") : Map.of()));
        BrowserType.LaunchOptions options =
                new BrowserType.LaunchOptions().setHeadless(true).setArgs(QUIET_FLAGS);
        installed.ifPresent(options::setExecutablePath);
        try {
            browser = playwright.chromium().launch(options);
        } catch (RuntimeException failure) {
            throw new IllegalStateException(
                    "The browser tests need a Chromium: install one (Debian: apt-get install chromium), or let this machine"
                            + " reach the browser library's download.",
                    failure);
        }
    }

    private static Optional<Path> installed() {
        return PLACES.stream().map(Path::of).filter(Files::isExecutable).findFirst();
    }

    private static Optional<Path> installFromDebian() {
        boolean root = "root".equals(System.getProperty("user.name"));
        if (root && Files.isExecutable(Path.of("/usr/bin/apt-get"))) {
            run("apt-get", "update", "-qq");
            for (String name : List.of("chromium-headless-shell", "chromium")) {
                if (installed().isEmpty()) {
                    run("apt-get", "install", "-y", "-qq", "--no-install-recommends", name);
                }
            }
        }
        return installed();
    }

    private static void run(String... command) {
        try {
            ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
            builder.environment().put("DEBIAN_FRONTEND", "noninteractive");
            Process process = builder.start();
            if (!process.waitFor(10, TimeUnit.MINUTES)) {
                process.destroyForcibly();
            }
        } catch (IOException failure) {
            System.err.println("Could not run " + String.join(" ", command) + ": " + failure.getMessage());
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    Browser browser() {
        return Objects.requireNonNull(browser, "The browser has not started.");
    }

    /** Also after a browser that did not start. */
    @Override
    public void afterAll(ExtensionContext context) {
        if (playwright != null) {
            playwright.close(); // with its browser
        }
    }
}

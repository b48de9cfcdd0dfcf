package benchpace.web;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.MalformedURLException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.openqa.selenium.MutableCapabilities;
import org.openqa.selenium.remote.RemoteWebDriver;
import org.opentest4j.TestAbortedException;

/**
 * Gives tests the engine of most instructors' tablets: WebKit, driven over the W3C's WebDriver, on a screen that nobody
 * sees. Without it the tests are reported as skipped, in words; where {@code CI=true} that is a failure.
 */
public final class TabletEngine implements BeforeAllCallback, ParameterResolver {
    private static final String DRIVER = "WebKitWebDriver";
    private static final String SCREEN = "Xvfb";
    private static final Path LIBRARIES = Path.of("/usr/lib");
    private static final String BROWSER = "webkit2gtk-4.1/MiniBrowser";
    /** What the engine's pages complain of is written here, a line each. */
    private static final String COMPLAINT = "CONSOLE JS ERROR";

    /** The screen and the driver; one browser at a time. */
    static final class Engine implements AutoCloseable {
        private final Path browser;
        private final Path said;
        private final Process screen;
        private final Process driver;
        private final int port;

        private Engine(Path driver, Path screen, Path browser) {
            this.browser = browser;
            try {
                this.said = Files.createTempFile("webkit", ".txt");
                this.screen = new ProcessBuilder(screen.toString(), "-displayfd", "1", "-screen", "0", "2000x1200x24",
                        "-nolisten", "tcp").redirectError(ProcessBuilder.Redirect.DISCARD).start();
                String display = this.screen.inputReader().readLine();
                this.port = freePort();
                ProcessBuilder start = new ProcessBuilder(driver.toString(), "--host=127.0.0.1", "--port=" + port)
                        .redirectErrorStream(true).redirectOutput(said.toFile());
                start.environment().putAll(Map.of("DISPLAY", ":" + display, "LIBGL_ALWAYS_SOFTWARE", "1",
                        "WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS", "1", "GDK_BACKEND", "x11"));
                this.driver = start.start();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static int freePort() throws IOException {
            try (ServerSocket socket = new ServerSocket(0)) {
                return socket.getLocalPort();
            }
        }

        /** A fresh browser that knows nothing yet. */
        RemoteWebDriver browser() {
            MutableCapabilities wished = new MutableCapabilities();
            wished.setCapability("browserName", "MiniBrowser");
            wished.setCapability("webkitgtk:browserOptions", Map.of("binary", browser.toString(),
                    "args", List.of("--automation", "--enable-write-console-messages-to-stdout=1")));
            return new RemoteWebDriver(address(), wished, false);
        }

        private URL address() {
            try {
                return URI.create("http://127.0.0.1:" + port).toURL();
            } catch (MalformedURLException e) {
                throw new IllegalStateException(e);
            }
        }

        /** What pages complained of so far. */
        List<String> complaints() {
            try (Stream<String> lines = Files.lines(said)) {
                return lines.filter(line -> line.contains(COMPLAINT)).toList();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override public void close() throws IOException, InterruptedException {
            for (Process process : List.of(driver, screen)) {
                process.destroy();
                if (!process.waitFor(5, TimeUnit.SECONDS)) {
                    process.destroyForcibly();
                }
            }
            Files.deleteIfExists(said);
        }
    }

    @Override public void beforeAll(ExtensionContext context) {
        engine(context);
    }

    private static Engine engine(ExtensionContext context) {
        return context.getRoot().getStore(Namespace.create(TabletEngine.class))
                .getOrComputeIfAbsent("engine", key -> start(), Engine.class);
    }

    private static Engine start() {
        return new Engine(onPath(DRIVER).orElseThrow(TabletEngine::missing),
                onPath(SCREEN).orElseThrow(TabletEngine::missing), browser().orElseThrow(TabletEngine::missing));
    }

    private static Optional<Path> onPath(String name) {
        return Stream.of(Optional.ofNullable(System.getenv("PATH")).orElse("").split(File.pathSeparator))
                .map(folder -> Path.of(folder, name)).filter(Files::isExecutable).findFirst();
    }

    /** In a folder that bears the processor's name. */
    private static Optional<Path> browser() {
        try (Stream<Path> folders = Files.list(LIBRARIES)) {
            return folders.map(folder -> folder.resolve(BROWSER)).filter(Files::isExecutable).findFirst();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static RuntimeException missing() {
        String words = "No WebKit is on this machine: install the packages webkit2gtk-driver and xvfb.";
        return "true".equals(System.getenv("CI")) ? new IllegalStateException(words)
                : new TestAbortedException(words + " The tests in the tablets' engine were skipped.");
    }

    @Override public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Engine.class;
    }

    @Override public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return engine(context);
    }
}
